package quadmean.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Iterator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The paths and transforms that maps are written with, as shapes. */
final class SvgPath {
    private static final Pattern STEP = Pattern.compile("[A-Za-z]|-?[0-9.]+");
    private static final Pattern MOVE = Pattern.compile("(translate|rotate)\\(([^)]*)\\)");

    private SvgPath() {}

    /** A path of straight lines: M, L, l and Z, each letter written out. Holes stay open. */
    static Path2D of(String d) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Iterator<String> steps =
                STEP.matcher(d).results().map(MatchResult::group).iterator();
        while (steps.hasNext()) {
            String letter = steps.next();
            switch (letter) {
                case "M" -> path.moveTo(next(steps), next(steps));
                case "L" -> path.lineTo(next(steps), next(steps));
                case "l" -> {
                    Point2D at = path.getCurrentPoint();
                    path.lineTo(at.getX() + next(steps), at.getY() + next(steps));
                }
                case "Z" -> path.closePath();
                default -> throw new IllegalArgumentException("a map has no path with " + letter);
            }
        }
        return path;
    }

    private static double next(Iterator<String> steps) {
        return Double.parseDouble(steps.next());
    }

    /** Shifts and turns in their order; nothing for an empty text. */
    static AffineTransform transform(String text) {
        AffineTransform all = new AffineTransform();
        MOVE.matcher(text).results().forEach(m -> {
            String[] numbers = m.group(2).split(" ", -1);
            if (m.group(1).equals("rotate")) {
                all.rotate(Math.toRadians(Double.parseDouble(numbers[0])));
            } else {
                all.translate(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1]));
            }
        });
        return all;
    }
}
