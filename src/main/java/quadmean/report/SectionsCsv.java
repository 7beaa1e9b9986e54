package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quadmean.model.FelledStem;
import quadmean.units.Unit;
import quadmean.volume.FelledSections;
import quadmean.volume.StemVolume;
import quadmean.volume.SummedStem;

/** Each section of each measured stem, in both unit systems. */
final class SectionsCsv {
    private static final List<String> HEADER = List.of(
            "tree",
            "species",
            "row",
            "section",
            "from_m",
            "to_m",
            "from_ft",
            "to_ft",
            "rule",
            "volume_m3",
            "volume_ft3");

    private SectionsCsv() {}

    static Content of(FelledSections sections) {
        return Csv.of(HEADER, sections.stems().stream().flatMap(SectionsCsv::rows));
    }

    private static Stream<List<String>> rows(SummedStem sum) {
        List<List<String>> rows = new ArrayList<>();
        FelledStem stem = sum.stem();
        for (StemVolume.Section s : sum.volume().sections()) {
            rows.add(List.of(
                    stem.id(),
                    stem.species(),
                    Long.toString(stem.row()),
                    Integer.toString(rows.size() + 1),
                    Csv.number(s.fromM()),
                    Csv.number(s.toM()),
                    Csv.number(Unit.METRE.convert(s.fromM(), Unit.FOOT)),
                    Csv.number(Unit.METRE.convert(s.toM(), Unit.FOOT)),
                    s.method(),
                    Csv.number(s.volumeM3()),
                    Csv.number(Unit.CUBIC_METRE.convert(s.volumeM3(), Unit.CUBIC_FOOT))));
        }
        return rows.stream();
    }
}
