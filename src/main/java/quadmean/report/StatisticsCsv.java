package quadmean.report;

import java.util.Arrays;
import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.StandStatistic;
import quadmean.units.UnitSystem;

/** Stand statistics as a file, metric rows and the same in US units after each. */
final class StatisticsCsv {
    private static final List<String> HEADER = List.of(
            "stratum",
            "statistic",
            "unit",
            "n",
            "df",
            "value",
            "se",
            "lower",
            "upper",
            "sampling_error_percent",
            "rule",
            "source",
            "equation_standing",
            "reason");

    private StatisticsCsv() {}

    static Content of(CruiseResult result) {
        return Csv.of(
                HEADER,
                result.estimate().structure().statistics().stream()
                        .flatMap(s -> Arrays.stream(UnitSystem.values()).map(system -> row(result, s, system))));
    }

    private static List<String> row(CruiseResult result, StandStatistic s, UnitSystem system) {
        return List.of(
                s.stratum(),
                s.statistic().id(),
                s.statistic().unit(system).symbol(),
                Integer.toString(s.n()),
                Csv.number(s.df()),
                Csv.number(s.in(system, s.value())),
                Csv.number(s.in(system, s.se())),
                Csv.number(s.in(system, s.lower())),
                Csv.number(s.in(system, s.upper())),
                Csv.number(s.samplingErrorPercent()),
                s.rule(),
                s.statistic().source(),
                Facts.standing(result, s),
                s.reason());
    }
}
