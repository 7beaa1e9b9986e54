package quadmean.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.DiameterClass;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Stand table and stock table as files: metric rows and the same in US units after each; {@code *} is all classes or all species. */
final class StandTableCsv {
    private static final List<String> HEADER = List.of(
            "lower_cm",
            "upper_cm",
            "lower_in",
            "upper_in",
            "species",
            "attribute",
            "basis",
            "unit",
            "n",
            "df",
            "mean",
            "se",
            "lower",
            "upper",
            "sampling_error_percent",
            "equation_standing",
            "reason");

    private StandTableCsv() {}

    /** Trees and basal area. */
    static Content stand(CruiseResult result) {
        return of(result, List.of(Attribute.TREES, Attribute.BASAL_AREA));
    }

    /** Volume and what is made of it. */
    static Content stock(CruiseResult result) {
        return of(
                result, List.of(Attribute.VOLUME, Attribute.NET_LOG_VOLUME, Attribute.NET_BOARD_FEET, Attribute.VALUE));
    }

    private static Content of(CruiseResult result, List<Attribute> attributes) {
        Stream<List<String>> classes = result.estimate().structure().classes().stream()
                .filter(c -> attributes.contains(c.row().attribute()))
                .flatMap(c -> rows(result, limits(c), c.row()));
        Stream<List<String>> all = result.estimate().wholeRows().stream()
                .filter(r -> r.stratum().equals(EstimateRow.ALL) && attributes.contains(r.attribute()))
                .flatMap(r -> rows(result, List.of("*", "*", "*", "*"), r));
        return Csv.of(HEADER, Stream.concat(classes, all));
    }

    private static List<String> limits(ClassRow c) {
        DiameterClass size = c.size();
        return List.of(
                Csv.number(size.lowerCm()),
                Csv.number(size.upperCm()),
                Csv.number(Unit.CENTIMETRE.convert(size.lowerCm(), Unit.INCH)),
                Csv.number(Unit.CENTIMETRE.convert(size.upperCm(), Unit.INCH)));
    }

    private static Stream<List<String>> rows(CruiseResult result, List<String> limits, EstimateRow row) {
        return Arrays.stream(UnitSystem.values())
                .map(system -> Stream.concat(limits.stream(), numbers(result, row, system))
                        .toList());
    }

    private static Stream<String> numbers(CruiseResult result, EstimateRow row, UnitSystem system) {
        return Stream.of(
                row.species(),
                row.attribute().id(),
                row.basis().id(),
                row.unit(system).symbol(),
                Integer.toString(row.n()),
                Csv.number(row.df()),
                Csv.number(row.in(system, row.mean())),
                Csv.number(row.in(system, row.se())),
                Csv.number(row.in(system, row.lower())),
                Csv.number(row.in(system, row.upper())),
                Csv.number(row.samplingErrorPercent()),
                Facts.standing(result, row),
                row.reason());
    }
}
