package quadmean.simulate;

import java.util.List;
import quadmean.layout.LaidPlot;
import quadmean.model.Tally;

/**
 * One cruise on paper, as the crew brings it home.
 *
 * @param tally the tally
 * @param places where the plots that are visited lie; empty for a complete tally
 * @param visited plots visited
 * @param measured trees measured
 * @param counted trees counted, or predicted, and not measured
 * @param heights heights measured
 */
record PaperTally(Tally tally, List<LaidPlot> places, int visited, int measured, int counted, int heights) {}
