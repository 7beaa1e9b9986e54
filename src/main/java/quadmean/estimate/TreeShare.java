package quadmean.estimate;

import java.util.List;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;

/**
 * What a tallied tree adds to the values of its plot.
 *
 * @param species species code
 * @param perHa what it adds per hectare, one number for each attribute in their order
 * @param trees trees that the row stands for
 * @param remarks what a reader should know of such trees, counted in the end
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record TreeShare(String species, double[] perHa, int trees, List<String> remarks) {
    public TreeShare {
        remarks = List.copyOf(remarks);
    }

    /**
     * The share of a stem.
     *
     * @param species its species code
     * @param attributes attributes to estimate
     * @param remarks what a reader should know of it
     */
    public static TreeShare of(
            String species, PlotDesign plot, List<Attribute> attributes, Stem stem, List<String> remarks) {
        double[] perHa = new double[attributes.size()];
        for (int i = 0; i < perHa.length; i++) {
            Attribute attribute = attributes.get(i);
            perHa[i] = stem.counts().contains(attribute)
                    ? PlotValue.treesPerHa(plot, stem) * PlotValue.value(attribute, Part.ALL, stem)
                    : 0;
        }
        return new TreeShare(species, perHa, stem.count(), remarks);
    }
}
