package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import quadmean.chart.MapChart;
import quadmean.chart.Picture;
import quadmean.chart.TractMap;
import quadmean.layout.SheetArea;
import quadmean.layout.SheetPlace;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;
import quadmean.units.UnitSystem;

/** The map of plots and walk on the outlines of a tract. */
public final class SheetMap {
    private SheetMap() {}

    /** Draws the map. */
    public static Picture picture(List<SheetArea> areas, SheetSet set, UnitSystem units, long seed) {
        return MapChart.picture(map(areas, set, units, seed));
    }

    static TractMap map(List<SheetArea> areas, SheetSet set, UnitSystem units, long seed) {
        return new TractMap(
                areas.stream().map(SheetMap::area).toList(),
                set.plots().stream().map(SheetMap::site).toList(),
                set.route().days().stream().map(d -> walk(set, d.day())).toList(),
                new TractMap.Site(set.route().startName(), at(set.route().start()), Set.of()),
                units,
                OptionalLong.of(seed));
    }

    private static TractMap.Area area(SheetArea area) {
        return new TractMap.Area(
                area.name(),
                area.rings().stream()
                        .map(ring -> ring.stream()
                                .map(c -> new TractMap.Point(c.eastM(), c.northM()))
                                .toList())
                        .toList());
    }

    private static TractMap.Site site(SheetPlot plot) {
        Set<TractMap.Mark> marks = plot.isNearEdge() ? Set.of(TractMap.Mark.NEAR_EDGE) : Set.of();
        return new TractMap.Site(plot.number(), at(plot.place()), marks);
    }

    private static TractMap.Walk walk(SheetSet set, int day) {
        List<TractMap.Point> points = new ArrayList<>();
        for (SheetRoute.Leg leg : set.route().legs()) {
            if (leg.day() == day) {
                if (points.isEmpty()) {
                    points.add(end(set, leg.from()));
                }
                points.add(end(set, leg.to()));
            }
        }
        return new TractMap.Walk(day, points);
    }

    private static TractMap.Point end(SheetSet set, String name) {
        return at(set.plot(name).map(SheetPlot::place).orElse(set.route().start()));
    }

    private static TractMap.Point at(SheetPlace place) {
        return new TractMap.Point(place.eastM(), place.northM());
    }
}
