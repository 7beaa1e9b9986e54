package quadmean.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.LogWorking;
import quadmean.cruise.TreeWorking;
import quadmean.height.HeightCurve;
import quadmean.model.BiomassSpec;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.CutLog;
import quadmean.volume.TreeEquation;

/** How the attribute of one tree comes about: height, equation, logs. */
final class TreeSteps {
    private final CruiseResult result;
    private final TreeWorking working;
    private final Attribute attribute;
    private final UnitSystem units;
    private final Steps steps;

    TreeSteps(CruiseResult result, TreeWorking working, Attribute attribute, Steps steps) {
        this.result = result;
        this.working = working;
        this.attribute = attribute;
        this.units = result.design().units();
        this.steps = steps;
    }

    /** A number of one tree in the units of the design. */
    static double shown(double metric, Attribute attribute, UnitSystem units) {
        return attribute.unit(Basis.TOTAL, UnitSystem.METRIC).convert(metric, attribute.unit(Basis.TOTAL, units));
    }

    void write() {
        switch (attribute) {
            case TREES -> steps.say("  one tree: 1");
            case BASAL_AREA -> basalArea();
            case VOLUME -> volume();
            case GREEN_WEIGHT -> greenWeight();
            case BIOMASS -> biomass();
            case CARBON -> carbon();
            case BOARD_FEET, NET_BOARD_FEET -> boardFeet();
            case LOG_VOLUME, NET_LOG_VOLUME, VALUE -> logs();
            default -> steps.say("  one tree: " + Steps.number(perTree()) + " " + unit());
        }
    }

    private void basalArea() {
        double d = Unit.CENTIMETRE.convert(working.stem().stem().dbhCm(), units.diameter());
        double factor = shown(BasalArea.ofTree(units.diameter().convert(1, Unit.CENTIMETRE)), attribute, units);
        String dbh = Steps.number(d);
        steps.step("basal area", Steps.number(factor) + " × " + dbh + " × " + dbh, perTree(), unit());
    }

    private void volume() {
        height();
        working.volume()
                .ifPresentOrElse(this::equation, () -> steps.say("  volume: not known, for there is no equation"));
        steps.say("  volume of one tree: "
                + Steps.number(shown(working.stem().stem().wood().volumeM3(), Attribute.VOLUME, units)) + " "
                + Attribute.VOLUME.unit(Basis.TOTAL, units).label());
    }

    private void equation(TreeEquation.Working w) {
        List<String> names = w.spec().form().coefficients();
        StringBuilder with = new StringBuilder();
        for (int i = 0; i < names.size(); i++) {
            with.append(names.get(i))
                    .append(' ')
                    .append(Steps.number(w.spec().coefficients().get(i)))
                    .append(", ");
        }
        if (w.spec().form().isLogarithmic()) {
            with.append("base ").append(w.spec().logBase().id());
            if (w.spec().residualSd() > 0) {
                with.append(", corrected for bias by half the square of ")
                        .append(Steps.number(w.spec().residualSd()));
            }
            with.append(", ");
        }
        with.append("D ")
                .append(Steps.number(w.dbh()))
                .append(' ')
                .append(w.spec().dbhUnit().label());
        if (w.spec().needsHeight()) {
            with.append(", H ")
                    .append(Steps.number(w.height()))
                    .append(' ')
                    .append(w.spec().heightUnit().label());
        } else {
            with.append(", L ").append(Steps.number(w.logs()));
        }
        steps.say("  equation: " + w.spec().form().formula() + " with " + with + "; "
                + w.spec().source() + " (" + w.spec().standing().label() + ")");
        steps.say("  equation gives V " + Steps.number(w.value()) + " "
                + w.spec().volumeUnit().label());
    }

    private void greenWeight() {
        volume();
        working.greenWeight().ifPresent(g -> {
            double kg = working.stem().stem().wood().greenKg();
            steps.step(
                    "green weight",
                    Steps.number(working.stem().stem().wood().volumeM3()) + " × " + Steps.number(g.kgPerM3()),
                    kg,
                    Unit.KILOGRAM.label());
        });
        one("green weight of one tree");
    }

    private void biomass() {
        working.biomass()
                .ifPresent(b -> steps.say("  equation: " + b.form().formula() + " with " + coefficients(b)
                        + ", d " + Steps.number(working.stem().stem().dbhCm()) + " cm; "
                        + b.provenance().source() + " ("
                        + b.provenance().standing().label() + ")"));
        steps.say("  dry biomass of one tree: "
                + Steps.number(shown(
                        Unit.KILOGRAM.convert(working.stem().stem().wood().dryKg(), Unit.TONNE),
                        Attribute.BIOMASS,
                        units))
                + " " + unit());
    }

    private static String coefficients(BiomassSpec spec) {
        return spec.coefficients().stream().map(Steps::number).collect(Collectors.joining(", "));
    }

    private void carbon() {
        biomass();
        result.used()
                .carbon()
                .ifPresent(c -> steps.step(
                        "carbon",
                        Steps.number(shown(
                                        Unit.KILOGRAM.convert(
                                                working.stem().stem().wood().dryKg(), Unit.TONNE),
                                        Attribute.BIOMASS,
                                        units))
                                + " × " + Steps.number(c.share()),
                        perTree(),
                        unit()));
    }

    private void boardFeet() {
        if (working.stem().stem().wood().treeBoardFeet().isEmpty()) {
            logs();
            return;
        }
        height();
        working.boardFeet().ifPresent(this::equation);
        double gross = working.stem().stem().wood().treeBoardFeet().getAsDouble();
        steps.say("  board feet of one tree: " + Steps.number(gross));
        if (attribute == Attribute.NET_BOARD_FEET) {
            String sound = Steps.number(gross) + " × (1 - "
                    + Steps.number(working.stem().stem().wood().defect()) + ")";
            steps.step("less defect", sound, perTree(), unit());
        }
    }

    private void logs() {
        height();
        if (working.logs().isEmpty()) {
            steps.say("  no log is cut from this stem");
        }
        working.logs().forEach(this::log);
        String terms = working.logs().stream()
                .map(l -> Steps.number(shown(of(l.log()), attribute, units)))
                .collect(Collectors.joining(" + "));
        steps.step("logs together", terms.isEmpty() ? "0" : terms, perTree(), unit());
    }

    private double of(CutLog log) {
        ToDoubleFunction<CutLog> value = switch (attribute) {
            case LOG_VOLUME -> CutLog::cubicM3;
            case NET_LOG_VOLUME -> CutLog::netM3;
            case BOARD_FEET -> CutLog::boardFeet;
            case NET_BOARD_FEET -> CutLog::netBoardFeet;
            default -> CutLog::value;
        };
        return value.applyAsDouble(log);
    }

    private void log(LogWorking l) {
        CutLog log = l.log();
        if (log.isUnknown()) {
            steps.say("  logs: not known");
            return;
        }
        Unit length = units.length();
        Unit dbh = units.diameter();
        steps.say("  log " + log.number() + ", " + Names.product(result.design(), log.product()) + ": from "
                + Steps.number(Unit.METRE.convert(log.fromM(), length)) + " " + length.label() + ", "
                + Steps.number(Unit.METRE.convert(log.lengthM(), length)) + " " + length.label() + " long, ends "
                + Steps.number(Unit.CENTIMETRE.convert(log.largeEndCm(), dbh)) + " and "
                + Steps.number(Unit.CENTIMETRE.convert(log.smallEndCm(), dbh)) + " " + dbh.label() + " inside bark");
        boolean cubic = attribute == Attribute.LOG_VOLUME || attribute == Attribute.NET_LOG_VOLUME;
        double gross = cubic ? shown(log.cubicM3(), Attribute.LOG_VOLUME, units) : log.boardFeet();
        if (attribute != Attribute.VALUE) {
            steps.say("    gross " + Steps.number(gross) + " " + unit() + (cubic ? "" : rule(l)));
        }
        if (attribute == Attribute.NET_LOG_VOLUME || attribute == Attribute.NET_BOARD_FEET) {
            String sound = Steps.number(gross) + " × (1 - " + Steps.number(log.defect()) + ")";
            steps.step("  less defect", sound, shown(of(log), attribute, units), unit());
        }
        if (attribute == Attribute.VALUE) {
            value(l);
        }
    }

    private void value(LogWorking l) {
        steps.say("    net of defect " + Steps.number(l.log().defect()) + ": "
                + Steps.number(l.log().netBoardFeet())
                + " bf" + rule(l) + ", " + Steps.number(shown(l.log().netM3(), Attribute.NET_LOG_VOLUME, units)) + " "
                + units.volume().label());
        String price = l.price()
                .map(p -> Steps.number(p.amount()) + " for a " + p.unit().label())
                .orElse("no price");
        steps.say("    price: " + price + "; worth " + Steps.number(l.log().value()) + " " + unit());
    }

    private String rule(LogWorking l) {
        if (l.pieces().isEmpty()) {
            return "";
        }
        String name = result.used().rule().map(r -> " by " + r.label()).orElse("");
        return name
                + l.pieces().stream()
                        .map(p -> Steps.number(p.inches()) + " in × " + Steps.number(p.feet()) + " ft: "
                                + Steps.number(p.boardFeet()) + " bf")
                        .collect(Collectors.joining("; ", " (", ")"));
    }

    private void height() {
        FieldHeight field = working.tree().tree().height();
        String source = working.tree().source().id();
        String height = Steps.number(Unit.METRE.convert(working.tree().heightM(), units.length())) + " "
                + units.length().label();
        if (working.tree().source() == HeightSource.NONE) {
            steps.say("  height: not known, and no curve");
        } else if (field != null) {
            if (!field.working().isEmpty()) {
                steps.step("height from readings, in m", field.working(), field.metres(), "m");
            }
            steps.say("  height, " + source + " (column " + field.column() + ": " + field.text() + "): " + height);
        } else {
            curve();
            steps.say("  height, " + source + ": " + height);
        }
    }

    private void curve() {
        HeightCurve curve = working.curve();
        if (curve == null) {
            return;
        }
        StringBuilder with = new StringBuilder("bh " + Steps.number(curve.breastHeight()));
        for (int i = 0; i < curve.parameters().length; i++) {
            with.append(", ").append((char) ('a' + i)).append(' ').append(Steps.number(curve.parameters()[i]));
        }
        double d = Unit.CENTIMETRE.convert(
                working.tree().tree().dbhCm(), curve.units().diameter());
        String scaled = curve.ratio().value() == 1
                ? ""
                : "; what is above bh times " + Steps.number(curve.ratio().value()) + " for this species";
        double gives = Unit.METRE.convert(working.curveHeightM(), curve.units().length());
        steps.say("  curve: " + curve.form().label() + ", h = " + curve.form().formula() + " with " + with + ", d "
                + Steps.number(d) + " " + curve.units().diameter().label() + scaled + "; gives "
                + Steps.number(gives) + " " + curve.units().length().label());
        if (!Steps.isSame(working.curveHeightM(), working.tree().heightM())) {
            steps.say(
                    working.tree().source() == HeightSource.CALIBRATED_CURVE
                            ? "  the curve is moved to the level of the plot by its measured trees"
                            : "  a draw of the scatter about the curve is added, from the seed of the design");
        }
    }

    private void one(String what) {
        steps.say("  " + what + ": " + Steps.number(perTree()) + " " + unit());
    }

    private double perTree() {
        return shown(working.stem().perTree(), attribute, units);
    }

    private String unit() {
        return attribute.unit(Basis.TOTAL, units).label();
    }
}
