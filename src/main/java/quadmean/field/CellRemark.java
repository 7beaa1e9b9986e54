package quadmean.field;

import quadmean.model.Rule;

/**
 * Something about a spreadsheet cell that its text does not tell.
 *
 * @param column number of the column, from 0
 * @param rule the rule that it breaks
 * @param detail what is wrong with it
 */
record CellRemark(int column, Rule rule, String detail) {}
