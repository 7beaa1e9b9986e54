package quadmean.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quadmean.model.Rule;

/** Lists of plot numbers: single ones, and ranges of whole numbers such as {@code 1-12}. */
final class PlotNumbers {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,6})-(\\d{1,6})");

    /** More than any cruise has; a range with a digit too many is found, and memory is spared. */
    private static final int MOST = 100_000;

    private PlotNumbers() {}

    static List<String> expand(Section section, String key) {
        List<String> plots = new ArrayList<>();
        for (String item : section.texts(key)) {
            Matcher range = RANGE.matcher(item.strip());
            if (!range.matches()) {
                add(section, key, item.strip(), plots);
                continue;
            }
            int from = Integer.parseInt(range.group(1));
            int to = Integer.parseInt(range.group(2));
            if (to < from) {
                section.problem(Rule.DESIGN_VALUE, key, item, "the range " + item + " runs backwards");
            }
            if (plots.size() + to - from >= MOST) {
                section.problem(Rule.DESIGN_VALUE, key, item, "these are more than " + MOST + " plots");
                return plots;
            }
            for (int i = from; i <= to; i++) {
                plots.add(Integer.toString(i));
            }
        }
        return plots;
    }

    private static void add(Section section, String key, String plot, List<String> plots) {
        if (plot.isEmpty()) {
            section.problem(Rule.DESIGN_VALUE, key, "", "a plot number must not be empty");
        } else {
            plots.add(plot);
        }
    }

    /** Reports plots that stand on a list for the second time. */
    static void checkTwice(Section section, String key, List<String> listed, Set<String> before) {
        for (String plot : listed) {
            if (!before.add(plot)) {
                section.problem(Rule.DESIGN_VALUE, key, plot, "plot " + plot + " is listed twice");
            }
        }
    }
}
