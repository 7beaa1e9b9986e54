/** Commands, exit codes and messages; the only room that prints or exits. */
@org.jspecify.annotations.NullMarked
package quadmean.cli;
