/** Records of the cruise: strata, plots, trees, rules and problems; no logic beyond invariants. */
@org.jspecify.annotations.NullMarked
package quadmean.model;
