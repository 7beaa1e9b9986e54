package quadmean.cruise;

import quadmean.field.EstateSink;
import quadmean.field.RowFindings;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;

/** The first pass over an estate: draws the heights that its curves are fitted to. */
final class HeightDrawer implements EstateSink {
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
    public int work(int stand, Tree tree, Use use, RowFindings problems) {
        if (tree.height() != null && tree.detail().top() == Top.WHOLE) {
            draw.offer(job.regionOf(stand), job.stands().get(stand).code(), tree);
        }
        return 0;
    }

    @Override
    public void add(int number) {}

    @Override
    public void end() {}
}
