package quadmean.audit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import quadmean.cruise.ErrorBudget;
import quadmean.cruise.ErrorPart;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.estimate.EstimateRow;
import quadmean.model.ListedStand;
import quadmean.model.Stratum;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.WeightedSum;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * Adds stands up. Sampling errors are independent from stand to stand, so that variances add. The error of a curve, an equation or an
 * instrument that stands share goes the same way in all of them: there standard errors add, and do not average out (by algebra).
 */
public final class Combine {
    /** Parts that stands may share. */
    private static final List<Source> SHARED =
            List.of(Source.CURVES, Source.EQUATIONS, Source.HEIGHT_BIAS, Source.DBH_BIAS);

    private final List<CombinedStand> stands;
    private final Attribute attribute;
    private final List<StandTotal> totals;

    private Combine(List<CombinedStand> stands, Attribute attribute) {
        this.stands = stands;
        this.attribute = attribute;
        this.totals = stands.stream().map(this::total).toList();
    }

    /**
     * Adds up stands that all estimate an attribute.
     *
     * @param stands one or more
     * @param confidence confidence level of the limits, in (0, 1)
     */
    public static Combined of(List<CombinedStand> stands, Attribute attribute, double confidence) {
        Combine work = new Combine(List.copyOf(stands), attribute);
        StandTotal all =
                work.sum("All stands", IntStream.range(0, stands.size()).boxed().toList());
        return new Combined(
                attribute,
                confidence,
                stands,
                work.totals,
                work.groups(),
                work.strata(),
                all,
                Math.sqrt(work.totals.stream()
                        .mapToDouble(t -> t.totalSe() * t.totalSe())
                        .sum()),
                work.notes());
    }

    /** Whether a stand estimates an attribute's total. */
    public static boolean estimates(CombinedStand stand, Attribute attribute) {
        return row(stand, EstimateRow.ALL, attribute).isPresent();
    }

    private static Optional<EstimateRow> row(CombinedStand stand, String stratum, Attribute attribute) {
        return stand.cruise().estimate().row(stratum, EstimateRow.ALL, attribute, Basis.TOTAL);
    }

    private StandTotal total(CombinedStand stand) {
        double areaHa = stand.cruise().design().areaHa();
        Map<Source, Double> shared = new EnumMap<>(Source.class);
        double other = 0;
        Optional<ErrorBudget> budget = stand.cruise().budgets().stream()
                .filter(b -> b.attribute() == attribute)
                .findFirst();
        for (ErrorPart part : budget.map(ErrorBudget::parts).orElse(List.of())) {
            if (SHARED.contains(part.source())) {
                boolean known = part.kind() != Kind.UNKNOWN;
                shared.put(part.source(), known ? areaHa * Math.sqrt(Math.max(0, part.variance())) : Double.NaN);
            } else if (part.kind() == Kind.ADDED) {
                other += areaHa * areaHa * part.variance();
            }
        }
        return new StandTotal(
                stand.name(),
                areaHa,
                stand.cruise().tally().plots().size(),
                estimate(row(stand, EstimateRow.ALL, attribute).orElseThrow()),
                shared,
                other);
    }

    private static MeanEstimate estimate(EstimateRow row) {
        return new MeanEstimate(row.n(), row.df(), row.mean(), row.se(), 0);
    }

    /** Some of the stands together. */
    private StandTotal sum(String name, List<Integer> members) {
        List<MeanEstimate> parts =
                members.stream().map(i -> totals.get(i).sampling()).toList();
        Map<Source, Double> shared = new EnumMap<>(Source.class);
        for (Source source : SHARED) {
            if (members.stream().anyMatch(i -> totals.get(i).shared().containsKey(source))) {
                shared.put(source, shared(source, members));
            }
        }
        return new StandTotal(
                name,
                members.stream().mapToDouble(i -> totals.get(i).areaHa()).sum(),
                members.stream().mapToInt(i -> totals.get(i).plots()).sum(),
                sum(parts),
                shared,
                members.stream().mapToDouble(i -> totals.get(i).otherVariance()).sum());
    }

    private static MeanEstimate sum(List<MeanEstimate> parts) {
        double[] ones = new double[parts.size()];
        java.util.Arrays.fill(ones, 1);
        return WeightedSum.of(ones, parts, DegreesOfFreedom.SATTERTHWAITE);
    }

    /** Errors of stands with the same entry add up; those of different entries are independent. NaN where none is known. */
    private double shared(Source source, List<Integer> members) {
        Map<String, Double> byEntry = new LinkedHashMap<>();
        for (int i : members) {
            Double se = totals.get(i).shared().get(source);
            if (se != null && !Double.isNaN(se)) {
                byEntry.merge(entry(source, i), se, Double::sum);
            }
        }
        return byEntry.isEmpty()
                ? Double.NaN
                : Math.sqrt(byEntry.values().stream().mapToDouble(se -> se * se).sum());
    }

    /** What stands must have in common to share an error; curves of a stand's own tally are its own. */
    private String entry(Source source, int stand) {
        ListedStand listed = stands.get(stand).listed();
        return switch (source) {
            case CURVES -> listed.curves().isEmpty() ? "\n" + stand : listed.curves();
            case EQUATIONS -> listed.equations();
            default -> listed.crew();
        };
    }

    private List<StandTotal> groups() {
        Map<String, List<Integer>> byGroup = new TreeMap<>();
        for (int i = 0; i < stands.size(); i++) {
            String group = stands.get(i).listed().group();
            if (!group.isEmpty()) {
                byGroup.computeIfAbsent(group, g -> new ArrayList<>()).add(i);
            }
        }
        return byGroup.entrySet().stream()
                .map(e -> sum(e.getKey(), e.getValue()))
                .toList();
    }

    /** Strata of the same code across stands, where stands have strata. */
    private List<StandTotal> strata() {
        Map<String, List<MeanEstimate>> estimates = new TreeMap<>();
        Map<String, Double> areas = new TreeMap<>();
        for (CombinedStand stand : stands) {
            List<Stratum> own = stand.cruise().design().stratumList();
            for (Stratum s : own.size() > 1 ? own : List.<Stratum>of()) {
                row(stand, s.code(), attribute).ifPresent(row -> {
                    estimates.computeIfAbsent(s.code(), c -> new ArrayList<>()).add(estimate(row));
                    areas.merge(s.code(), s.areaHa(), Double::sum);
                });
            }
        }
        return estimates.entrySet().stream()
                .map(e -> new StandTotal(
                        e.getKey(),
                        areas.getOrDefault(e.getKey(), Double.NaN),
                        e.getValue().stream().mapToInt(MeanEstimate::n).sum(),
                        sum(e.getValue()),
                        Map.of(),
                        0))
                .toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Sampling errors of stands are taken as independent. The errors of curves, equations and instruments that"
                        + " stands share add up: they do not average out over stands.");
        notes.add(
                "Stands share equations and instruments unless the list gives them different entries under equations and crew,"
                        + " which is cautious; each has height curves of its own unless the list gives some the same entry under curves.");
        List<String> none = stands.stream()
                .filter(s -> s.cruise().budgets().stream().noneMatch(b -> b.attribute() == attribute))
                .map(CombinedStand::name)
                .toList();
        if (!none.isEmpty()) {
            notes.add("Stands without an error budget for this attribute bring their sampling error alone: "
                    + String.join(", ", none) + ".");
        }
        for (Source source : SHARED) {
            List<String> unknown = IntStream.range(0, stands.size())
                    .filter(i -> Double.isNaN(totals.get(i).shared().getOrDefault(source, 0.0)))
                    .mapToObj(i -> stands.get(i).name())
                    .toList();
            if (!unknown.isEmpty()) {
                notes.add("Not known, and not in the errors, for " + source.label() + " of: "
                        + String.join(", ", unknown) + ".");
            }
        }
        for (CombinedStand stand : stands) {
            row(stand, EstimateRow.ALL, attribute)
                    .filter(r -> Double.isNaN(r.mean()) || Double.isNaN(r.se()))
                    .ifPresent(r -> notes.add(stand.name() + " has no "
                            + (Double.isNaN(r.mean()) ? attribute.label() : "sampling error") + ": " + r.reason()
                            + ". The sum is left without it too."));
        }
        return notes;
    }
}
