package quadmean.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.design.Design;
import quadmean.design.PlanSettings.Pilot;
import quadmean.design.StratumEntry;
import quadmean.estimate.EstimateRow;
import quadmean.layout.BoundaryReader;
import quadmean.layout.SheetSet;
import quadmean.layout.Tract;
import quadmean.layout.TractReading;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.plan.CruisePlan;
import quadmean.plan.PlanOption;
import quadmean.plan.Planner;
import quadmean.plan.StratumOutlook;
import quadmean.report.Content;
import quadmean.report.FieldSheets;
import quadmean.report.PlanOutputs;
import quadmean.units.Basis;

/** {@code quadmean plan}: how many plots the target takes. */
@Command(
        name = "plan",
        description = "Works out how many plots reach the target error, and how they are shared among strata.",
        footer = {
            "",
            "Writes plan.json, plan.csv and sheets.html, which the crew takes along; with",
            "[layout] in the design also the plots on the map, the walk, and files for",
            "receivers. The variation comes from [plan] cv, from expected_mean and",
            "expected_cv of each stratum, or with [plan] pilot = \"tally\" from the tally.",
            "Example:",
            "  quadmean plan designs/demo.toml"
        })
final class PlanCommand extends DesignCommand {
    @Override
    boolean readsTally(Design design) {
        return design.plan().pilot() == Pilot.TALLY;
    }

    @Override
    ExitCode run(Design design) throws IOException {
        List<StratumOutlook> outlook;
        String variation;
        if (design.plan().pilot() == Pilot.TALLY) {
            TallyNeeded.check(design, "plan");
            CruiseRun run = Cruise.run(design, talk().progress("Fitting curves to resampled plots"));
            CruiseResult result = run.result();
            if (result == null) {
                return refuse(run.tally().problems(), inputs(design));
            }
            ProblemPrinter.print(talk().notes(), run.tally().problems());
            variation = "from the pilot tally of " + run.tally().plots().size() + " plots";
            outlook = fromPilot(design, result);
        } else {
            variation = "as stated in the design";
            outlook = fromDesign(design);
        }
        Optional<StratumOutlook> unusable = outlook.stream()
                .filter(s -> !(s.mean() > 0) || !(s.cvPercent() > 0))
                .findFirst();
        if (outlook.isEmpty() || unusable.isPresent()) {
            return refuse(List.of(unknownVariation(design, unusable)), inputs(design));
        }
        List<String> remarks = new ArrayList<>();
        Tract tract = null;
        if (design.tract().isPresent()) {
            TractReading reading = BoundaryReader.read(design);
            tract = reading.tract();
            if (tract == null) {
                return refuse(reading.problems(), inputs(design));
            }
            ProblemPrinter.print(talk().notes(), reading.problems());
            TractLines.of(design, tract).forEach(out()::println);
            remarks.addAll(tract.notes());
        }
        CruisePlan plan = Planner.plan(design, variation, outlook);
        print(design, plan);
        PlanLayout layout = PlanLayout.of(design, tract, plan);
        if (layout.outcome() == PlanLayout.Outcome.REFUSED) {
            return refuse(layout.problems(), inputs(design));
        }
        layout.notes().forEach(n -> out().println("  " + n));
        Map<String, Content> files = new LinkedHashMap<>(PlanOutputs.of(design, plan));
        files.put("sheets.html", FieldSheets.of(design, SheetSet.withoutPlaces(remarks), Optional.empty()));
        files.putAll(layout.files());
        for (Path p : write(design, files)) {
            out().println("Written: " + p);
        }
        talk().summary().plan(design, plan);
        talk().next("print " + folder().resolve("sheets.html") + ", tally the plots, then quadmean check "
                + design.file());
        return ExitCode.DONE;
    }

    private static List<StratumOutlook> fromPilot(Design design, CruiseResult result) {
        List<StratumOutlook> outlook = new ArrayList<>();
        boolean single = design.strata().size() == 1;
        for (StratumEntry entry : design.strata()) {
            String code = entry.stratum().code();
            result.estimate()
                    .row(single ? EstimateRow.ALL : code, EstimateRow.ALL, design.targetAttribute(), Basis.PER_AREA)
                    .ifPresent(r ->
                            outlook.add(new StratumOutlook(code, entry.stratum().areaHa(), r.mean(), r.cvPercent())));
        }
        return outlook;
    }

    /** One stand-wide CV, or the expectations of each stratum; empty if the design says too little. */
    private static List<StratumOutlook> fromDesign(Design design) {
        if (design.plan().cvPercent().isPresent() && design.strata().size() == 1) {
            StratumEntry only = design.strata().get(0);
            return List.of(new StratumOutlook(
                    only.stratum().code(),
                    only.stratum().areaHa(),
                    only.expectedMean().orElse(1),
                    design.plan().cvPercent().getAsDouble()));
        }
        List<StratumOutlook> outlook = new ArrayList<>();
        for (StratumEntry entry : design.strata()) {
            if (entry.expectedMean().isEmpty() || entry.expectedCvPercent().isEmpty()) {
                return List.of();
            }
            outlook.add(new StratumOutlook(
                    entry.stratum().code(),
                    entry.stratum().areaHa(),
                    entry.expectedMean().getAsDouble(),
                    entry.expectedCvPercent().getAsDouble()));
        }
        return outlook;
    }

    private static Problem unknownVariation(Design design, Optional<StratumOutlook> unusable) {
        String detail = unusable.map(s ->
                        "the pilot shows no variation in stratum " + s.code() + " (it takes two plots that differ)")
                .orElse(
                        design.strata().size() == 1
                                ? "the variation between plots is not known: give plan.cv, or plan.pilot = \"tally\""
                                : "the variation between plots is not known: give each stratum expected_mean and"
                                        + " expected_cv, or plan.pilot = \"tally\"");
        return new Problem(
                design.file().getFileName().toString(), 0, "plan", "", Rule.DESIGN_MISSING, Policy.REFUSE, detail);
    }

    private void print(Design design, CruisePlan plan) {
        out().printf(
                        Locale.ROOT,
                        "%s: target ±%s %% of the %s at %s %% confidence; variation %s%n",
                        design.name(),
                        plain(plan.targetErrorPercent()),
                        design.targetAttribute().label(),
                        plain(100 * plan.confidence()),
                        plan.variation());
        for (PlanOption option : plan.options()) {
            if (!option.isReachable()) {
                out().println("  " + option.name() + ": no number of plots reaches the target");
                continue;
            }
            out().printf(
                            Locale.ROOT,
                            "  %s: %d plots%s, expected error %.2f %%%n",
                            option.name(),
                            option.total(),
                            shares(plan, option),
                            option.expectedErrorPercent());
        }
        plan.notes().forEach(n -> out().println("  " + n));
    }

    /** A number as people write it: no zeros at the end, no rounding dirt. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String shares(CruisePlan plan, PlanOption option) {
        if (plan.outlook().size() == 1) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < plan.outlook().size(); i++) {
            parts.add(plan.outlook().get(i).code() + " " + option.plots().get(i));
        }
        return " (" + String.join(", ", parts) + ")";
    }
}
