package quadmean.cruise;

import org.jspecify.annotations.Nullable;
import quadmean.field.EstateSink;
import quadmean.field.RowFindings;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;

/** The first pass over an estate: draws the heights that its curves are fitted to. */
final class HeightDrawer implements EstateSink<Boolean> {
    private final EstateJob job;
    private final HeightDraw draw;

    HeightDrawer(EstateJob job, HeightDraw draw) {
        this.job = job;
        this.draw = draw;
    }

    HeightDraw draw() {
        return draw;
    }

    @Override
    public int stand(String code) {
        return job.stand(code);
    }

    @Override
    public int kind(int stand) {
        return job.regionOf(stand);
    }

    @Override
    public void begin(int stand, String plot, long line) {}

    @Override
    public @Nullable Boolean work(int stand, Tree tree, RowFindings problems) {
        if (tree.height() != null && tree.detail().top() == Top.WHOLE) {
            draw.offer(job.regionOf(stand), job.stands().get(stand).code(), tree);
        }
        return Boolean.TRUE;
    }

    @Override
    public void add(Boolean tree) {}

    @Override
    public void end() {}
}
