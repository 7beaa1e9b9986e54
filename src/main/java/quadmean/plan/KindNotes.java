package quadmean.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;
import quadmean.units.Unit;

/** What a reader of a comparison should know. */
final class KindNotes {
    /** Fewer plots than this on a map tell little of their variation: common practice, no source. */
    private static final double LITTLE_ROOM = 10;

    private final Design design;
    private final double cvPercent;
    private final double cvAreaHa;
    private final String ofPilot;
    private final List<String> tooFew = new ArrayList<>();
    private final List<String> tooMany = new ArrayList<>();
    private final List<String> littleRoom = new ArrayList<>();
    private final List<String> outOfReach = new ArrayList<>();

    KindNotes(Design design, double cvPercent, double cvAreaHa, List<Plot> pilot, boolean isTried) {
        this.design = design;
        this.cvPercent = cvPercent;
        this.cvAreaHa = cvAreaHa;
        this.ofPilot = ofPilot(pilot, isTried);
    }

    /** What a pilot says of the kinds; empty without one, and where it says nothing of distances. */
    private static String ofPilot(List<Plot> pilot, boolean isTried) {
        if (isTried) {
            return "Variation from the " + pilot.size()
                    + " plots of the pilot, on which each kind takes the trees within its own"
                    + " distance; kinds that reach farther than the pilot's plots go by the map or the rule.";
        }
        long without = PilotStudy.withoutDistance(pilot);
        long rows = pilot.stream()
                .mapToLong(p -> p.trees().size() + p.counted().size())
                .sum();
        return without == 0 || without == rows
                ? ""
                : without + " of " + rows
                        + " rows of the pilot have no distance or no dbh, so that kinds cannot be tried out"
                        + " on it.";
    }

    /** Takes note of a kind. */
    void see(KindOption option, MapStudy.@Nullable Finding finding) {
        String name = name(option.plot());
        if (option.treeCount() == KindOption.TreeCount.TOO_FEW) {
            tooFew.add(name);
        } else if (option.treeCount() == KindOption.TreeCount.TOO_MANY) {
            tooMany.add(name);
        }
        if (finding != null && finding.room() < LITTLE_ROOM) {
            littleRoom.add(name);
        }
        if (option.plots().isEmpty()) {
            outOfReach.add(name);
        }
    }

    List<String> sentences(Optional<KindComparison.Study> study) {
        List<String> notes = new ArrayList<>();
        if (!ofPilot.isEmpty()) {
            notes.add(ofPilot);
        }
        study.ifPresent(s -> notes.add(ofMap(s)));
        notes.add(rule());
        study.ifPresent(s -> notes.add("A map shows the variation within its own "
                + show(Unit.HECTARE.convert(s.areaHa(), design.units().area())) + " "
                + design.units().area().symbol()
                + "; a tract varies more from part to part, and takes more plots of every kind than this says."));
        if (study.isPresent() && study.get().attribute() != design.targetAttribute()) {
            notes.add("A map of stems has no " + design.targetAttribute().label() + "; basal area stands in for it.");
        }
        notes.add("The walk is taken as the spacing of a square grid times the plots, √(area × plots), without the way"
                + " there and back; measure the pace and the times of your own crew.");
        addIf(notes, tooFew, "under 4 trees are expected on a point");
        addIf(notes, tooMany, "over 8 trees are expected on a point");
        addIf(notes, littleRoom, "the map has room for fewer than 10 such plots, and tells little of their variation");
        addIf(notes, outOfReach, "no number of plots reaches the target");
        return notes;
    }

    private static void addIf(List<String> notes, List<String> names, String what) {
        if (!names.isEmpty()) {
            String practice = what.startsWith("no number") ? "" : " (common practice, no source)";
            notes.add(String.join(", ", names) + ": " + what + practice + ".");
        }
    }

    private String ofMap(KindComparison.Study s) {
        return String.format(
                Locale.ROOT,
                "Variation of %s from the map %s, %d stems: each kind at the same %,d places on a grid that keeps %s %s"
                        + " off the edge, so that no plot is cut.",
                s.attribute() == Attribute.TREES
                        ? "the number of trees"
                        : s.attribute().label(),
                s.name(),
                s.stems(),
                s.places(),
                show(Unit.METRE.convert(s.reachM(), design.units().length())),
                design.units().length().symbol());
    }

    private String rule() {
        if (Double.isNaN(cvAreaHa)) {
            return "The plot-size rule has no plot of one size to start from.";
        }
        String area = show(Unit.HECTARE.convert(cvAreaHa, design.units().area())) + " "
                + design.units().area().symbol();
        return "The plot-size rule: CV2 = CV1·(A1/A2)^(1/4) (Freese 1961, from memory), from " + show(cvPercent)
                + " % at " + area + "; a point counts as the fixed plot with as many trees (an assumption, no source).";
    }

    private String name(PlotDesign plot) {
        return KindName.of(plot, design.units());
    }

    private static String show(double value) {
        return KindName.number(value);
    }
}
