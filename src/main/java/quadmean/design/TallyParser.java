package quadmean.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code [[tally]]} and {@code [tally.columns]}. */
final class TallyParser {
    private TallyParser() {}

    static List<TallyFile> parse(Section root, Path designFile) {
        TallyPaths paths = new TallyPaths(designFile);
        List<TallyFile> files = new ArrayList<>();
        List<String> written = new ArrayList<>();
        for (Section s : root.tableList("tally")) {
            String name = s.requiredText("file");
            Path path = paths.resolve(s, name).orElse(designFile);
            TallyPaths.checkNew(s, path, name, files);
            TallyFormat format = FormatParser.parse(s, name);
            Section columns = s.requiredTable("columns");
            files.add(new TallyFile(path, fileName(path), format, ColumnsParser.parse(columns)));
            written.add(name);
            columns.close();
            s.close();
        }
        return TallyPaths.named(files, written);
    }

    private static String fileName(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }
}
