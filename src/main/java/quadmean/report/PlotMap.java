package quadmean.report;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quadmean.chart.Picture;
import quadmean.chart.PlotValueMap;
import quadmean.chart.TractMap;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.PlotResult;
import quadmean.layout.ListedPlaces;
import quadmean.layout.SheetPlace;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The map of what each plot holds of the target attribute. */
final class PlotMap {
    private PlotMap() {}

    /** The map; empty if nobody says where a plot is. */
    static Optional<Picture> picture(CruiseResult result, List<PlotResult> plots) {
        Map<String, SheetPlace> places = ListedPlaces.of(result.tally().listed());
        Attribute attribute = attribute(result);
        UnitSystem units = result.design().units();
        Unit from = attribute.unit(Basis.PER_AREA, UnitSystem.METRIC);
        Unit to = attribute.unit(Basis.PER_AREA, units);
        List<PlotValueMap.Value> values = plots.stream()
                .filter(p -> places.containsKey(p.id()))
                .map(p -> new PlotValueMap.Value(
                        p.id(),
                        at(Objects.requireNonNull(places.get(p.id()))),
                        from.convert(p.perHa().getOrDefault(attribute, Double.NaN), to)))
                .toList();
        return values.isEmpty()
                ? Optional.empty()
                : Optional.of(PlotValueMap.picture(
                        values, attribute, Wording.units(result.design(), attribute, Basis.PER_AREA, units), units));
    }

    private static TractMap.Point at(SheetPlace place) {
        return new TractMap.Point(place.eastM(), place.northM());
    }

    /** What the cruise is about; a diameter is no amount of a plot, and basal area takes its place. */
    private static Attribute attribute(CruiseResult result) {
        Attribute target = result.design().targetAttribute();
        return target == Attribute.QUADRATIC_MEAN_DIAMETER ? Attribute.BASAL_AREA : target;
    }
}
