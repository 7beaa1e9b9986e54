package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import quadmean.model.Rule;

/** A row of a sheet: texts, remarks, and which cells hold formulas. */
final class SheetRow {
    private final long number;
    private final List<String> texts = new ArrayList<>();
    private final List<CellRemark> remarks = new ArrayList<>();
    private final List<Integer> formulas = new ArrayList<>();

    SheetRow(long number) {
        this.number = number;
    }

    long number() {
        return number;
    }

    void put(int column, String text) {
        while (texts.size() <= column) {
            texts.add("");
        }
        texts.set(column, text);
    }

    void remark(int column, String detail) {
        remarks.add(new CellRemark(column, Rule.CELL_UNUSABLE, detail));
    }

    void formula(int column) {
        formulas.add(column);
    }

    List<CellRemark> remarks() {
        return remarks;
    }

    List<Integer> formulas() {
        return formulas;
    }

    /** Texts without spaces around. */
    List<String> texts() {
        return texts.stream().map(String::strip).toList();
    }

    /** As many texts as the header has, the rest left out or empty. */
    List<String> texts(int size) {
        List<String> sized = new ArrayList<>(size + 1);
        for (int i = 0; i < size; i++) {
            sized.add(i < texts.size() ? texts.get(i) : "");
        }
        return sized;
    }

    boolean isBlank() {
        return remarks.isEmpty() && texts.stream().allMatch(String::isBlank);
    }
}
