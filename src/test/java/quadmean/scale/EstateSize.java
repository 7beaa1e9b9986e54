package quadmean.scale;

/**
 * How large an invented estate is, and what it is drawn from.
 *
 * @param stands number of stands, 1 or more
 * @param plotsPerStand mean number of plots in a stand, 2 or more
 * @param treesPerPlot mean number of trees on a plot, 2 or more; empty plots included
 * @param seed seed of all that is drawn
 */
record EstateSize(int stands, int plotsPerStand, int treesPerPlot, long seed) {
    EstateSize {
        if (stands < 1 || plotsPerStand < 2 || treesPerPlot < 2) {
            throw new IllegalArgumentException("An estate has 1 stand or more, and on the mean 2 plots or more in each"
                    + " and 2 trees or more on each plot; given were " + stands + ", " + plotsPerStand + " and "
                    + treesPerPlot);
        }
    }
}
