package quadmean.audit;

import java.util.List;
import java.util.Map;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;

/**
 * The growth of an attribute, per hectare and in its metric unit.
 *
 * @param attribute the attribute
 * @param components means over the plots with their errors, by component
 * @param trees every tree
 */
public record AttributeGrowth(Attribute attribute, Map<Component, MeanEstimate> components, List<GrowthTree> trees) {
    public AttributeGrowth {
        components = java.util.Collections.unmodifiableMap(new java.util.EnumMap<>(components));
        trees = List.copyOf(trees);
    }

    /** The mean of a component. */
    public MeanEstimate of(Component component) {
        return java.util.Objects.requireNonNull(components.get(component), component.id());
    }

    /** Covariance of the means of both dates: (Var1 + Var2 - Var of the change)/2, by algebra. */
    public double covariance() {
        return (of(Component.START).variance()
                        + of(Component.END).variance()
                        - of(Component.CHANGE).variance())
                / 2;
    }

    /** Correlation of the means of both dates. */
    public double correlation() {
        return covariance() / of(Component.START).se() / of(Component.END).se();
    }

    /** Standard error that the net change would have if each date had plots of its own. */
    public double independentSe() {
        return Math.hypot(of(Component.START).se(), of(Component.END).se());
    }
}
