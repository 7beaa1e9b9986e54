package quadmean.field;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.field.EstateSink.Use;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;

/**
 * Takes the rows of a range as the CSV library reads them and hands plots and trees on. Rows are held to the rules of
 * {@link TallyReader}; readings that were in order before are known by their text.
 */
final class PlotRows extends AbstractBaseCsvCallbackHandler<Object> {
    /** No plot. */
    private static final int NOWHERE = -1;

    /** What ends the reading. */
    private static final Object STOP = new Object();

    private final Design design;
    private final Header header;
    private final EstateSink sink;
    private final TreeReader trees;
    private final TreeMemo memo;
    private final PlotText text = new PlotText();
    private final NumberSet numbers = new NumberSet();
    private final RowAccount account;
    private final int standAt;
    private final int plotAt;
    private final int treeAt;
    private final int heightAt;
    private final int topAt;
    private final List<RowAccount.Finding> findings = new ArrayList<>();
    private int stand = NOWHERE;
    private int kind;
    private int treesOfPlot;
    private @Nullable PlotUnderway underway;
    private long linesBefore;
    private long line;
    private boolean isOneLine = true;
    private boolean hasQuotes;
    private boolean isEmptyLine;

    /** Rows to come. */
    PlotRows(Design design, Header header, EstateSink sink, TreeReader trees, TreeMemo memo) {
        this.design = design;
        this.header = header;
        this.sink = sink;
        this.trees = trees;
        this.memo = memo;
        this.account = new RowAccount(design, header, trees);
        this.standAt = header.position().getOrDefault(ColumnRole.STAND, -1);
        this.plotAt = header.position().getOrDefault(ColumnRole.PLOT, -1);
        this.treeAt = header.position().getOrDefault(ColumnRole.TREE, -1);
        this.heightAt = header.position().getOrDefault(ColumnRole.HEIGHT, -1);
        this.topAt = header.position().getOrDefault(ColumnRole.TOP, -1);
    }

    /** Where the columns stand that say something of a tree itself, but for its height. */
    static int[] readings(Header header) {
        return header.position().entrySet().stream()
                .filter(e -> e.getKey() != ColumnRole.STAND
                        && e.getKey() != ColumnRole.PLOT
                        && e.getKey() != ColumnRole.TREE
                        && e.getKey() != ColumnRole.HEIGHT)
                .mapToInt(e -> e.getValue())
                .toArray();
    }

    /**
     * Reads on behind some lines.
     *
     * @param lines lines of the file before the next row
     */
    void from(long lines) {
        linesBefore = lines;
        hasQuotes = false;
    }

    /** Line of the last row begun. */
    long line() {
        return line;
    }

    @Override
    protected void handleBegin(long ofText) {
        line = linesBefore + ofText;
        text.begin(line);
        isOneLine = true;
        hasQuotes = false;
        isEmptyLine = false;
    }

    @Override
    protected void handleField(int field, char[] buffer, int offset, int length, boolean quoted) {
        if (quoted) {
            hasQuotes = true;
            for (int i = offset; i < offset + length; i++) {
                isOneLine &= buffer[i] != '\n' && buffer[i] != '\r';
            }
        }
        text.add(buffer, offset, length);
    }

    @Override
    protected void handleEmpty() {
        isEmptyLine = true;
    }

    /** Nothing is kept of a row; what is returned ends the reading at a row of several lines. */
    @Override
    protected @Nullable Object buildRecord() {
        if (!isOneLine) {
            return STOP;
        }
        if (isEmptyLine) {
            text.dropLast();
        } else if (text.fieldsOfLast() != header.size()) {
            account.wrongLength(lastRow());
            text.dropLast();
        } else if (text.isEmpty(standAt) || text.isEmpty(plotAt)) {
            account.nameless(lastRow());
            text.dropLast();
        } else {
            boolean isSameStand = text.rows() > 1 && text.isAsInFirst(standAt);
            boolean isNext = !isSameStand || !text.isAsInFirst(plotAt);
            int next = isSameStand ? stand : sink.stand(text.text(standAt));
            if (next < 0) {
                account.unknown(lastRow());
                text.dropLast();
            } else {
                if (isNext) {
                    begin(next);
                }
                tree();
            }
        }
        return null;
    }

    /** Whether the last row had quotes. */
    boolean hasQuotes() {
        return hasQuotes;
    }

    /** Ends the last plot. */
    EstateRows finish() {
        end();
        return account.rows();
    }

    /** Leaves the row out at which the reading ended. */
    void broken(String whole) {
        text.dropLast();
        account.wrongQuotes(whole, line);
    }

    private void begin(int next) {
        end();
        text.keepLast();
        numbers.clear();
        underway = null;
        treesOfPlot = 0;
        trees.beginPlot();
        stand = next;
        kind = sink.kind(stand);
        sink.begin(stand, text.text(plotAt), text.line(0));
    }

    private void end() {
        if (stand >= 0) {
            PlotUnderway plot = underway;
            if (plot != null && treesOfPlot > 0) {
                plot.emptyRowProblem(design).ifPresent(account::takeBack);
            }
            sink.end();
        }
        stand = NOWHERE;
    }

    private void tree() {
        boolean isNew = underway == null && (treeAt < 0 || text.word(treeAt) == 0 || numbers.add(treeNumber()));
        int known = isNew ? memo.find(text, kind) : TreeMemo.UNKNOWN;
        if (known == TreeMemo.UNKNOWN || isWritten(topAt)) {
            read(isNew);
        } else if (!isWritten(heightAt)) {
            take(memo.number(known));
            account.use();
        } else if (!isMeasured(memo.tree(known))) {
            read(isNew);
        }
    }

    /** The tree's number in its plot, as a number; what is no word may share it, which then only means a closer look. */
    private long treeNumber() {
        long word = text.word(treeAt);
        return word == PlotText.NO_WORD ? text.hash(treeAt) : word;
    }

    private boolean isWritten(int field) {
        return field >= 0 && !text.isEmpty(field);
    }

    /**
     * Takes a tree with a height that reads like one without but for that. Trees with heights are many, and hardly ever read alike.
     *
     * @return whether that was all there is to it; if not, nothing was done
     */
    private boolean isMeasured(Tree like) {
        double written = text.plainNumber(heightAt, header.file().decimal());
        FieldHeight height = Double.isNaN(written) ? null : trees.measured(header.file(), written, text.text(heightAt));
        if (height == null) {
            return false;
        }
        Tree tree =
                like.alike(header.file().name(), text.line(text.rows() - 1), text.text(plotAt), numberText(), height);
        findings.clear();
        int number = sink.work(
                stand,
                tree,
                Use.ONCE,
                (rule, column, value, detail) -> findings.add(new RowAccount.Finding(rule, column, value, detail)));
        RowProblems found = findings.isEmpty() ? null : account.problems(findings, lastRow());
        if (number != EstateSink.OUT && (found == null || !found.isOut())) {
            take(number);
        }
        if (found == null) {
            account.use();
        } else {
            account.add(found);
        }
        return true;
    }

    private String numberText() {
        return treeAt < 0 ? "" : text.text(treeAt);
    }

    private void read(boolean isNew) {
        Row row = lastRow();
        RowProblems found = new RowProblems(design, row);
        if (row.isEmptyPlot()) {
            plot().noteEmpty(row, found);
        } else {
            if (!isNew) {
                plot().checkRepeats(row, found);
            }
            Tree tree = trees.read(row, found);
            if (tree != null) {
                boolean isPlain = isNew && tree.height() == null && !isWritten(heightAt) && !isWritten(topAt);
                work(tree, isPlain && found.list().isEmpty() && memo.hasRoom(text), found);
            }
        }
        account.add(found);
    }

    private void work(Tree tree, boolean isKept, RowProblems found) {
        int number = sink.work(stand, tree, isKept ? Use.AGAIN : Use.ONCE, found::add);
        if (number == EstateSink.OUT || found.isOut()) {
            return;
        }
        take(number);
        if (isKept && found.list().isEmpty()) {
            memo.put(text, kind, tree, number);
        }
    }

    private void take(int number) {
        treesOfPlot++;
        sink.add(number);
    }

    /** The plot with the numbers of the rows before, which is made where a row has something to it. */
    private PlotUnderway plot() {
        PlotUnderway plot = underway;
        if (plot == null) {
            plot = new PlotUnderway(text.text(plotAt), "");
            for (int i = 0; i < text.rows() - 1; i++) {
                Row before = row(i);
                plot.checkRepeats(before, new RowProblems(design, before));
            }
            underway = plot;
        }
        return plot;
    }

    private Row lastRow() {
        return row(text.rows() - 1);
    }

    private Row row(int i) {
        return new Row(header.file(), text.line(i), text.fields(i), header.position(), List.of(), header.names());
    }
}
