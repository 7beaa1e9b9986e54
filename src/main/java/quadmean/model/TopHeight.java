package quadmean.model;

/** How many of the thickest trees on a unit of ground the top height is the mean height of (from memory). */
public enum TopHeight {
    HUNDRED_PER_HECTARE("100_per_ha", "100 thickest trees per hectare", 100),
    FORTY_PER_ACRE("40_per_ac", "40 thickest trees per acre", 40 / 0.40468564224);

    private final String id;
    private final String label;
    private final double treesPerHa;

    TopHeight(String id, String label, double treesPerHa) {
        this.id = id;
        this.label = label;
        this.treesPerHa = treesPerHa;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The words used in outputs. */
    public String label() {
        return label;
    }

    /** Number of trees (trees/ha). */
    public double treesPerHa() {
        return treesPerHa;
    }
}
