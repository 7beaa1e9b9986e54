/** Plots on the ground: where they lie, how to walk to them, and what the crew needs there. */
@org.jspecify.annotations.NullMarked
package quadmean.layout;
