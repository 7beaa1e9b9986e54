package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.model.LogSettings;
import quadmean.model.Product;
import quadmean.units.Unit;
import quadmean.volume.LogScale;

/** How logs were cut and measured and trees weighed, in sentences. */
final class WoodStatement {
    private WoodStatement() {}

    /** Of logs and board feet. */
    static List<String> of(CruiseResult result) {
        Design design = result.design();
        List<String> words = new ArrayList<>();
        design.wood().logs().ifPresent(logs -> {
            words.add(cutting(design, logs));
            words.add(products(design, logs));
            logs.scaling()
                    .ifPresentOrElse(
                            s -> words.add(String.join(
                                    " ", LogScale.of(s, logs.cubic()).statement())),
                            () -> words.add(
                                    "Cubic volume of logs by " + logs.cubic().label() + ", "
                                            + logs.cubic().formula()
                                            + ", from sections inside bark, without trim. No log rule was"
                                            + " asked for, so there are no board feet."));
            words.add("Net is gross less the defect tallied on the tree and that of its product. Logs are cut from stem"
                    + " profiles and do not add up to the volume of trees, which comes from equations of its own and has"
                    + " stump, tops and trim in it.");
        });
        if (!design.wood().boardFeet().isEmpty()) {
            words.add(
                    "Board feet come from equations of whole trees; net is gross less the defect tallied on the tree.");
        }
        return words;
    }

    private static String cutting(Design design, LogSettings logs) {
        String how = switch (logs.method()) {
            case LENGTHS ->
                "Stems are cut on paper from the stump up, each log to the first product and length below that fits.";
            case BEST_VALUE ->
                "Stems are cut on paper so that they fetch most at the prices below, by trying every cut; pieces left out"
                        + " are multiples of " + length(design, logs.wasteStepM()) + ".";
        };
        return how + " Stump " + length(design, logs.stumpM()) + ", trim " + length(design, logs.trimM())
                + " a log. No log reaches above the tip, a break, or the merchantable height or logs counted where they were taken.";
    }

    private static String products(Design design, LogSettings logs) {
        return logs.products().stream()
                .map(p -> product(design, p))
                .collect(Collectors.joining("; ", "Products, the one preferred most first: ", "."));
    }

    private static String product(Design design, Product p) {
        String from = p.species().isEmpty()
                ? ""
                : " from " + String.join(", ", p.species().stream().sorted().toList());
        String grades = p.grades().isEmpty()
                ? ""
                : ", grades " + String.join(", ", p.grades().stream().sorted().toList());
        String large =
                Double.isInfinite(p.maxLargeEndCm()) ? "" : ", large end to " + diameter(design, p.maxLargeEndCm());
        String defect = p.defect() == 0 ? "" : ", less " + Wording.percent(100 * p.defect()) + " hidden defect";
        String lengths = p.lengthsM().stream()
                .map(l -> Wording.plain(
                        rounded(Unit.METRE.convert(l, design.units().length()))))
                .collect(Collectors.joining(", "));
        String cubic = p.measure() == Product.Measure.CUBIC ? ", cubic volume alone" : "";
        return p.code() + " (" + p.name() + ")" + from + grades + ", lengths " + lengths + " "
                + design.units().length().label() + ", small end inside bark from "
                + diameter(design, p.minSmallEndCm()) + large + cubic + defect;
    }

    /** Of green weight, dry biomass and carbon. */
    static List<String> weight(CruiseResult result) {
        Design design = result.design();
        List<String> words = new ArrayList<>();
        if (!design.wood().greenWeight().isEmpty()) {
            words.add("Green weight is cubic volume of trees times a factor.");
        }
        if (!design.wood().biomass().isEmpty()) {
            words.add(
                    "Dry biomass comes from dbh alone, of every tree that counts as a tree; it shows nothing of height,"
                            + " defect or breakage.");
        }
        design.wood()
                .carbon()
                .ifPresent(c -> words.add("Carbon is " + Wording.plain(c.share()) + " of dry biomass: "
                        + c.provenance().source() + "."));
        return words;
    }

    private static String length(Design design, double metres) {
        Unit unit = design.units().length();
        return Wording.plain(rounded(Unit.METRE.convert(metres, unit))) + " " + unit.label();
    }

    private static String diameter(Design design, double cm) {
        Unit unit = design.units().diameter();
        return Wording.plain(rounded(Unit.CENTIMETRE.convert(cm, unit))) + " " + unit.label();
    }

    private static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
