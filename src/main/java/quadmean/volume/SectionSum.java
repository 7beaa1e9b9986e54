package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.model.CubicRule;
import quadmean.volume.StemVolume.Section;

/** Cuts a measured stem at stump and top, and sums its sections. */
final class SectionSum {
    /** Two sections count as equally long if the point between them is this near the middle (m). */
    private static final double MIDWAY = 1e-6;

    private final StemSections stem;
    private final StemPart cut;
    private final StemPoint last;
    private final List<String> remarks;

    SectionSum(StemSections stem, StemPart cut) {
        this.stem = stem;
        this.cut = cut;
        this.last = stem.points().get(stem.points().size() - 1);
        this.remarks = new ArrayList<>(stem.remarks());
        double first = stem.points().get(0).heightM();
        double end = tipKnown() ? stem.totalHeightM() : last.heightM();
        if (cut.stumpM() < first || cut.stumpM() >= end) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "stump of %s m must lie from the lowest point, %s m, to below the top, %s m",
                    cut.stumpM(),
                    first,
                    end));
        }
    }

    StemVolume volume() {
        List<StemPoint> nodes = nodes();
        List<Section> sections = new ArrayList<>(between(nodes));
        StemPoint base = nodes.get(nodes.size() - 1);
        double top = base.heightM();
        if (tipKnown() && base.diameterCm() > cut.topCm() && tipEnd() > top) {
            top = tipEnd();
            sections.add(tip(base, top));
        }
        if (sections.isEmpty()) {
            remarks.add("The stem is no thicker than the top diameter at the stump.");
        }
        if (!tipKnown() && base.diameterCm() > cut.topCm()) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The volume ends at the highest point, %s m, where the stem is %s cm thick: the total height is not"
                            + " known.",
                    top,
                    base.diameterCm()));
        }
        return new StemVolume(sections, cut.stumpM(), top, remarks);
    }

    /** From the stump over the measured points to the first place as thin as the top diameter, or the highest point. */
    private List<StemPoint> nodes() {
        List<StemPoint> nodes = new ArrayList<>();
        nodes.add(StemPoint.of(cut.stumpM(), diameterCm(cut.stumpM())));
        for (StemPoint p : stem.points()) {
            StemPoint below = nodes.get(nodes.size() - 1);
            if (below.diameterCm() <= cut.topCm()) {
                break;
            }
            StemPoint next = p.diameterCm() > cut.topCm() ? p : onLine(below, p);
            if (next.heightM() > below.heightM()) {
                nodes.add(next);
            }
        }
        return nodes;
    }

    private StemPoint onLine(StemPoint below, StemPoint above) {
        double share = (below.diameterCm() - cut.topCm()) / (below.diameterCm() - above.diameterCm());
        return StemPoint.of(below.heightM() + share * (above.heightM() - below.heightM()), cut.topCm());
    }

    private double diameterCm(double heightM) {
        for (int i = 0; i < stem.points().size(); i++) {
            StemPoint p = stem.points().get(i);
            if (p.heightM() == heightM) {
                return p.diameterCm();
            }
            if (p.heightM() > heightM) {
                StemPoint below = stem.points().get(i - 1);
                double share = (heightM - below.heightM()) / (p.heightM() - below.heightM());
                return below.diameterCm() + share * (p.diameterCm() - below.diameterCm());
            }
        }
        double share = (stem.totalHeightM() - heightM) / (stem.totalHeightM() - last.heightM());
        return last.diameterCm() * Math.sqrt(cut.tip().section(1, share));
    }

    /** Pairs of equal sections by Huber or Newton, if one of these is asked for; single sections by Smalian. */
    private List<Section> between(List<StemPoint> nodes) {
        List<Section> sections = new ArrayList<>();
        int i = 0;
        while (i + 1 < nodes.size()) {
            boolean pair = cut.rule() != CubicRule.SMALIAN && i + 2 < nodes.size() && midway(nodes.subList(i, i + 3));
            int end = i + (pair ? 2 : 1);
            sections.add(section(pair ? cut.rule() : CubicRule.SMALIAN, nodes.subList(i, end + 1)));
            i = end;
        }
        return sections;
    }

    private static boolean midway(List<StemPoint> three) {
        double middle = (three.get(0).heightM() + three.get(2).heightM()) / 2;
        return Math.abs(three.get(1).heightM() - middle) <= MIDWAY;
    }

    private static Section section(CubicRule rule, List<StemPoint> points) {
        StemPoint lower = points.get(0);
        StemPoint middle = points.get(1);
        StemPoint upper = points.get(points.size() - 1);
        double volume =
                CubicVolume.ofSections(rule, area(lower), area(middle), area(upper), upper.heightM() - lower.heightM());
        return new Section(lower.heightM(), upper.heightM(), volume, rule.label());
    }

    private double tipEnd() {
        double share = Math.pow(cut.topCm() / last.diameterCm(), 2.0 / cut.tip().exponent());
        return stem.totalHeightM() - share * (stem.totalHeightM() - last.heightM());
    }

    private Section tip(StemPoint base, double top) {
        double volume = cut.tip().frustum(area(base), CubicVolume.section(cut.topCm()), top - base.heightM());
        return new Section(base.heightM(), top, volume, "tip as a " + cut.tip().label());
    }

    private boolean tipKnown() {
        return !Double.isNaN(stem.totalHeightM());
    }

    private static double area(StemPoint point) {
        return CubicVolume.section(point.diameterCm());
    }
}
