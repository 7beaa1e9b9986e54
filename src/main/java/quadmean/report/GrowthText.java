package quadmean.report;

import java.util.Arrays;
import java.util.List;
import quadmean.audit.AttributeGrowth;
import quadmean.audit.Component;
import quadmean.audit.Growth;
import quadmean.chart.Wording;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Numbers of growth in the units of the design. */
final class GrowthText {
    private final Growth growth;
    private final UnitSystem units;

    GrowthText(Growth growth) {
        this.growth = growth;
        this.units = growth.after().design().units();
    }

    /** The components that this kind of plot has. */
    List<Component> components() {
        return Arrays.stream(Component.values())
                .filter(c -> growth.hasOngrowth()
                        || (c != Component.ONGROWTH && c != Component.REWEIGHTING && c != Component.NET_BY_DATES))
                .toList();
    }

    Unit unit(Attribute attribute) {
        return attribute.unit(Basis.PER_AREA, units);
    }

    String unitLabel(Attribute attribute) {
        return Wording.units(growth.after().design(), attribute, Basis.PER_AREA, units);
    }

    double in(Attribute attribute, double metric) {
        return attribute.unit(Basis.PER_AREA, UnitSystem.METRIC).convert(metric, unit(attribute));
    }

    Rounding rounding(AttributeGrowth g, MeanEstimate e) {
        return Rounding.of(in(g.attribute(), e.mean()), in(g.attribute(), e.se()));
    }

    String mean(AttributeGrowth g, Component c) {
        MeanEstimate e = g.of(c);
        return rounding(g, e).text(in(g.attribute(), e.mean()));
    }

    String se(AttributeGrowth g, Component c) {
        MeanEstimate e = g.of(c);
        return e.hasError() ? rounding(g, e).text(in(g.attribute(), e.se())) : Rounding.UNKNOWN;
    }

    String limits(AttributeGrowth g, Component c) {
        MeanEstimate e = g.of(c);
        if (!e.hasError()) {
            return Rounding.UNKNOWN;
        }
        Interval i = e.interval(growth.after().design().confidence());
        Rounding rounding = rounding(g, e);
        return rounding.text(in(g.attribute(), i.lower())) + " to " + rounding.text(in(g.attribute(), i.upper()));
    }

    String yearly(AttributeGrowth g, Component c) {
        if (!c.isChange()) {
            return Rounding.UNKNOWN;
        }
        double years = growth.settings().years();
        MeanEstimate e = g.of(c);
        return Rounding.of(in(g.attribute(), e.mean()) / years, in(g.attribute(), e.se()) / years)
                .text(in(g.attribute(), e.mean()) / years);
    }

    /** How far the equations can be trusted; empty where nothing needs saying. */
    String standing(AttributeGrowth g) {
        return Facts.standingSentence(growth.after(), g.attribute());
    }

    /** What pairing does, in a sentence; empty without errors. */
    String pairing(AttributeGrowth g) {
        MeanEstimate change = g.of(Component.CHANGE);
        if (!change.hasError() || !(g.independentSe() > 0)) {
            return "";
        }
        Rounding rounding = rounding(g, change);
        return Wording.capital(g.attribute().label()) + ": the two dates are correlated by "
                + Rounding.decimals(3).text(g.correlation())
                + "; with plots of its own at each date the standard error of"
                + " the net change would be " + rounding.text(in(g.attribute(), g.independentSe())) + " instead of "
                + rounding.text(in(g.attribute(), change.se())) + " " + unitLabel(g.attribute()) + ".";
    }
}
