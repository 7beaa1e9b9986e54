package quadmean.design;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.Stratum;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [[stratum]]}; without any, the stand is one stratum of {@code cruise.area}. */
final class StrataParser {
    /** Code of the only stratum where the design names none. */
    static final String WHOLE = "stand";

    /** Areas that differ by less than this (relative) agree. */
    private static final double AREA_AGREES = 1e-3;

    private StrataParser() {}

    static List<StratumEntry> parse(
            Section root, Section cruise, Section selection, UnitSystem units, SelectionMethod method) {
        List<Section> sections = root.tableList("stratum");
        if (sections.isEmpty()) {
            return List.of(whole(cruise, selection, units, method));
        }
        List<StratumEntry> strata = new ArrayList<>();
        Set<String> codes = new HashSet<>();
        Set<String> plots = new HashSet<>();
        for (Section s : sections) {
            StratumEntry entry = stratum(s, units);
            if (!codes.add(entry.stratum().code())) {
                s.problem(Rule.DESIGN_VALUE, "code", entry.stratum().code(), "two strata have this code");
            }
            if (entry.stratum().code().equals("*")) {
                s.problem(Rule.DESIGN_VALUE, "code", "*", "* stands for all strata; give this one a code of its own");
            }
            PlotNumbers.checkTwice(s, "plots", entry.plots(), plots);
            s.close();
            strata.add(entry);
        }
        if (selection.has("plots")) {
            selection.problem(
                    Rule.DESIGN_VALUE, "plots", "", "with strata, list the plots of each under [[stratum]] plots");
        }
        checkMethod(selection, method, strata.size());
        checkArea(cruise, units, strata);
        return strata;
    }

    private static StratumEntry whole(Section cruise, Section selection, UnitSystem units, SelectionMethod method) {
        double area = cruise.requiredNumber("area", Range.POSITIVE);
        checkMethod(selection, method, 1);
        Stratum stratum = new Stratum(WHOLE, "whole stand", units.area().convert(area, Unit.HECTARE));
        List<String> plots = PlotNumbers.expand(selection, "plots");
        PlotNumbers.checkTwice(selection, "plots", plots, new HashSet<>());
        return StratumEntry.of(stratum, plots);
    }

    private static StratumEntry stratum(Section s, UnitSystem units) {
        String code = s.requiredText("code");
        double area = s.requiredNumber("area", Range.POSITIVE);
        return new StratumEntry(
                new Stratum(code, s.text("name").orElse(code), units.area().convert(area, Unit.HECTARE)),
                PlotNumbers.expand(s, "plots"),
                s.number("expected_mean", Range.POSITIVE),
                s.number("expected_cv", Range.POSITIVE),
                s.number("plot_cost", Range.POSITIVE),
                PlanParser.whole(s, "fewest_plots", Range.TWO_OR_MORE).orElse(StratumEntry.FEWEST));
    }

    private static void checkMethod(Section selection, SelectionMethod method, int strata) {
        if (strata > 1 && !method.isStratified()) {
            selection.problem(
                    Rule.DESIGN_VALUE,
                    "method",
                    method.id(),
                    "with " + strata + " strata the method is \"stratified\" or \"stratified_systematic\"");
        }
        if (strata == 1 && method.isStratified()) {
            selection.problem(
                    Rule.DESIGN_VALUE,
                    "method",
                    method.id(),
                    "a stratified method needs two [[stratum]] tables or more");
        }
    }

    /** Without the dirt that conversions leave in the last digits. */
    private static double round(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(8)).doubleValue();
    }

    private static void checkArea(Section cruise, UnitSystem units, List<StratumEntry> strata) {
        OptionalDouble area = cruise.number("area", Range.POSITIVE);
        double sum = strata.stream().mapToDouble(s -> s.stratum().areaHa()).sum();
        if (area.isPresent()) {
            double stated = units.area().convert(area.getAsDouble(), Unit.HECTARE);
            if (Math.abs(stated - sum) > AREA_AGREES * sum) {
                cruise.problem(
                        Rule.DESIGN_VALUE,
                        "area",
                        Section.show(area.getAsDouble()),
                        "the strata add up to "
                                + Section.show(round(Unit.HECTARE.convert(sum, units.area())))
                                + " "
                                + units.area().symbol()
                                + "; leave cruise.area out, or mend the strata");
            }
        }
    }
}
