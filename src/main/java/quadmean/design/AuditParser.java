package quadmean.design;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.design.AuditSettings.Chosen;
import quadmean.design.Tolerances.Limit;
import quadmean.design.Tolerances.Scale;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [audit]}. */
final class AuditParser {
    /** Common practice, no source. */
    private static final double MATCH_PERCENT = 15;

    private static final double CONFIDENCE = 0.95;

    private final Section s;
    private final UnitSystem units;

    private AuditParser(Section s, UnitSystem units) {
        this.s = s;
        this.units = units;
    }

    static Optional<AuditSettings> parse(Section root, Path file, UnitSystem units, List<TallyFile> cruise) {
        if (!root.has("audit")) {
            return Optional.empty();
        }
        Section s = root.table("audit");
        List<TallyFile> tallies =
                SecondTallies.parse(s, file, cruise, "a [[audit.tally]] table with the checker's tally");
        AuditSettings settings = new AuditSettings(
                tallies,
                s.requiredChoice("chosen", Options.of(Chosen.values(), Chosen::id))
                        .orElse(Chosen.JUDGEMENT),
                s.number("margin", Range.PERCENT),
                s.number("match_within", Range.PERCENT, MATCH_PERCENT),
                s.number("bound_confidence", Range.BOUND_CONFIDENCE, CONFIDENCE),
                new AuditParser(s, units).tolerances());
        s.close();
        return Optional.of(settings);
    }

    private Tolerances tolerances() {
        Tolerances preset = s.choice("preset", Options.of(TolerancePreset.values(), TolerancePreset::id))
                .orElse(TolerancePreset.NONE)
                .limits();
        Tolerances all = new Tolerances(
                source(preset),
                dbh(preset.dbh()),
                limit("height", Scale.PERCENT, preset.height()),
                agreement("species", preset.species()),
                agreement("count", preset.count()),
                limit("defect", Scale.FIXED, preset.defect()));
        return all;
    }

    private String source(Tolerances preset) {
        boolean own = s.keys().stream()
                .filter(k -> !k.equals("match_within"))
                .anyMatch(k -> k.endsWith("_within") || k.endsWith("_share"));
        if (!own) {
            return preset.source();
        }
        return preset.equals(Tolerances.NONE)
                ? "as the design states"
                : preset.source() + "; some as the design states";
    }

    private Optional<Limit> dbh(Optional<Limit> preset) {
        OptionalDouble within = s.number("dbh_within", Range.NOT_NEGATIVE);
        OptionalDouble per = s.number("dbh_per", Range.POSITIVE);
        OptionalDouble share = share("dbh");
        if (within.isEmpty()) {
            if (per.isPresent()) {
                needs("dbh_per", "dbh_within");
            }
            return reshared("dbh", preset, share);
        }
        double cm = units.diameter().convert(within.getAsDouble(), Unit.CENTIMETRE);
        if (share.isEmpty() && preset.isEmpty()) {
            needs("dbh_within", "dbh_share");
        }
        double asked = share.orElse(preset.map(Limit::share).orElse(1.0));
        return Optional.of(
                per.isPresent()
                        ? new Limit(
                                cm, Scale.STEPS, units.diameter().convert(per.getAsDouble(), Unit.CENTIMETRE), asked)
                        : new Limit(cm, Scale.FIXED, Double.NaN, asked));
    }

    private Optional<Limit> limit(String what, Scale scale, Optional<Limit> preset) {
        OptionalDouble within = s.number(what + "_within", Range.PERCENT_OR_ZERO);
        OptionalDouble share = share(what);
        if (within.isEmpty()) {
            return reshared(what, preset, share);
        }
        if (share.isEmpty() && preset.isEmpty()) {
            needs(what + "_within", what + "_share");
        }
        double asked = share.orElse(preset.map(Limit::share).orElse(1.0));
        return Optional.of(new Limit(within.getAsDouble(), scale, Double.NaN, asked));
    }

    /** The preset's limit on another share of the readings. */
    private Optional<Limit> reshared(String what, Optional<Limit> preset, OptionalDouble share) {
        if (share.isPresent() && preset.isEmpty()) {
            needs(what + "_share", what + "_within");
        }
        return preset.map(p -> new Limit(p.within(), p.scale(), p.step(), share.orElse(p.share())));
    }

    private Optional<Limit> agreement(String what, Optional<Limit> preset) {
        OptionalDouble share = share(what);
        return share.isPresent() ? Optional.of(Limit.agreement(share.getAsDouble())) : preset;
    }

    private OptionalDouble share(String what) {
        OptionalDouble percent = s.number(what + "_share", Range.PERCENT);
        return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
    }

    private void needs(String key, String other) {
        s.problem(Rule.DESIGN_MISSING, key, "", s.path() + "." + key + " needs " + other + " beside it");
    }
}
