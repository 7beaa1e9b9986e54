package quadmean.design;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quadmean.model.Rule;

/** Lists of plot numbers: single ones, and ranges of whole numbers such as {@code 1-12}. */
final class PlotNumbers {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,6})-(\\d{1,6})");

    private PlotNumbers() {}

    static List<String> expand(Section section, String key) {
        List<String> plots = new ArrayList<>();
        for (String item : section.texts(key)) {
            Matcher range = RANGE.matcher(item.strip());
            if (!range.matches()) {
                plots.add(item.strip());
                continue;
            }
            int from = Integer.parseInt(range.group(1));
            int to = Integer.parseInt(range.group(2));
            if (to < from) {
                section.problem(Rule.DESIGN_VALUE, key, item, "the range " + item + " runs backwards");
            }
            for (int i = from; i <= to; i++) {
                plots.add(Integer.toString(i));
            }
        }
        return plots;
    }
}
