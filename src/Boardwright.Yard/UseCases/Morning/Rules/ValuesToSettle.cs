using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Two values for one thing, by people who did not know of each other: one is chosen.</summary>
internal static class ValuesToSettle
{
    public static IEnumerable<DayTask> Of(YardState state) => TwoValues.Of(state).GroupBy(two => two.About).Select(group =>
    {
        var first = group.First();
        return new DayTask(group.Key.Length > 0 ? group.Key : "Book", $"Choose between two values for {first.Field.Label}{(group.Count() > 1 ? $", and {group.Count() - 1} more" : "")}.", $"{first.Standing} says {first.Said.By}, {first.Value} says {first.Other.By}; neither knew of the other. Until then what was written first stands.",
            new("Said twice", $"{group.Count()}", group.Count() == 1 ? "field" : "fields", "both stay in the book") { Source = "the two entries" },
            new(20m, 1, "a wrong figure that others reckon with: a figure for the order of this sheet"), Duties.All, "/book/beside", "See both");
    });
}
