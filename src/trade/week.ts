export const daysPerWeek = 7;

/** Whole weeks of a year: a day more would be a week of work for a seventh of a week's staff. */
export const wholeWeeks = 52;
