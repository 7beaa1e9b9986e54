package quadmean.cruise;

import java.util.List;
import java.util.Locale;
import quadmean.cruise.ErrorPart.Kind;
import quadmean.cruise.ErrorPart.Source;
import quadmean.model.ErrorRules;
import quadmean.model.FieldHeight;

/** The parts of the error that come from measuring: each tree's own, and those that all trees share. */
final class Measurement {
    private final ErrorRules rules;
    private final List<TreeEffect> effects;

    Measurement(ErrorRules rules, List<TreeEffect> effects) {
        this.rules = rules;
        this.effects = effects;
    }

    /** Independent errors of the heights of sampled trees. */
    ErrorPart heightReadings() {
        double variance = 0;
        int known = 0;
        int unknown = 0;
        for (TreeEffect e : effects) {
            FieldHeight height = e.tree().tree().height();
            if (height == null || e.perMetre() == 0) {
                continue;
            }
            double sd = sdM(height);
            if (Double.isNaN(sd)) {
                unknown++;
            } else {
                known++;
                variance += Math.pow(e.perMetre() * sd, 2) / e.count();
            }
        }
        String beside = unknown == 0
                ? ""
                : "; the error of " + unknown + " heights is not known (state height_sd under [errors])";
        return known == 0
                ? new ErrorPart(
                        Source.HEIGHT_READINGS,
                        Kind.INSIDE,
                        unknown == 0 ? 0 : Double.NaN,
                        "In the variation between plots" + (unknown == 0 ? ": no measured height counts here" : beside)
                                + ".")
                : new ErrorPart(
                        Source.HEIGHT_READINGS,
                        Kind.INSIDE,
                        variance,
                        "Independent errors of " + known + " field heights, already in the variation between plots"
                                + beside + ".");
    }

    private double sdM(FieldHeight height) {
        return Double.isNaN(height.sdM()) ? rules.heightSdPercent() / 100 * height.metres() : height.sdM();
    }

    /** Independent errors of the dbh of sampled trees, with what they do to filled heights. */
    ErrorPart dbhReadings() {
        double variance = 0;
        for (TreeEffect e : effects) {
            variance += Math.pow(e.perCmFilled() * rules.dbhSdCm(), 2) / e.count();
        }
        return new ErrorPart(
                Source.DBH_READINGS,
                Kind.INSIDE,
                variance,
                String.format(
                        Locale.ROOT,
                        "Independent errors of each dbh, standard deviation %.3g cm (%.3g in)%s, already in the variation"
                                + " between plots.",
                        rules.dbhSdCm(),
                        rules.dbhSdCm() / 2.54,
                        rules.dbhSdCm() == ErrorRules.COMMON_DBH_SD_CM ? ", common practice, no source" : ""));
    }

    /** An error of all heights alike; heights filled from curves move with those that the curves were fitted to. */
    ErrorPart heightBias() {
        double perPercent = effects.stream()
                .filter(e -> e.perMetre() != 0)
                .mapToDouble(e -> e.perMetre() * e.tree().heightM() / 100)
                .sum();
        return shared(Source.HEIGHT_BIAS, perPercent, rules.heightBiasPercent(), "height_bias_sd", "heights");
    }

    /** An error of all dbh alike; a curve fitted to such dbh gives the same tree the same height. */
    ErrorPart dbhBias() {
        double perPercent = effects.stream()
                .mapToDouble(e -> e.perCm() * e.tree().tree().dbhCm() / 100)
                .sum();
        return shared(Source.DBH_BIAS, perPercent, rules.dbhBiasPercent(), "dbh_bias_sd", "dbh");
    }

    private static ErrorPart shared(Source source, double perPercent, double percent, String key, String what) {
        if (Double.isNaN(percent)) {
            return new ErrorPart(
                    source,
                    Kind.UNKNOWN,
                    Double.NaN,
                    "Not known, and not in the total; state " + key + " under [errors] (percent).");
        }
        return new ErrorPart(
                source,
                Kind.ADDED,
                Math.pow(perPercent * percent, 2),
                String.format(
                        Locale.ROOT,
                        "An error that all %s share, standard deviation %.3g %% as the design says; plots do not show it.",
                        what,
                        percent));
    }
}
