using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Changes customers ask for, and complaints of the last fortnight.</summary>
internal static class ChangesToSettle
{
    private const int ComplaintDays = 14;

    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => line.ChangeAsked is not null))
            {
                var asked = line.ChangeAsked!;
                yield return new(order.Tag, $"Answer {order.Customer}: a change is asked for.", $"{Sentence(asked.Why ?? "No reason is written")} Nothing changes until it is settled.",
                    new("Asked now", asked.Quantity is { } more ? $"{more:#,0.#}" : $"{DayWords.Of(asked.DueOn, state.Today)}", asked.Quantity is null ? "" : WoodWorth.UnitWords(line.Asked.Unit), $"was {(asked.Quantity is null ? $"{DayWords.Of(line.Asked.DueOn, state.Today)}" : WoodWorth.Words(line.Asked))}") { Source = $"{order.Customer}" },
                    new(WoodWorth.Of(state, line.Asked)?.Money ?? order.LatePerDayMoney, 2, "the order"), Duties.Office, $"/write/entry/order_change_settled?order={order.Tag}&line={line.Asked.Line}", "Write the answer");
            }
        }

        foreach (var complaint in state.Complaints.Where(complaint => state.Today.DayNumber - DateOnly.FromDateTime(complaint.At).DayNumber is >= 0 and < ComplaintDays))
        {
            var about = complaint.Fact.Order ?? complaint.Fact.Charge;
            yield return new(about ?? "Claim", $"Answer {complaint.Fact.Customer} from the record.", complaint.Fact.Text,
                new("Said on", $"{DayWords.Of(complaint.At, state.Today)}", "", complaint.Fact.CountedBf is { } counted ? $"counted {counted:#,0} bf {complaint.Fact.CountedHow}" : "nothing measured named") { Source = $"entry {complaint.Entry}" },
                new(50m, 1, "a customer’s good will: a figure for the order of this sheet"), Duties.Office,
$"/promises/claims?entry={complaint.Entry}", "Answer it");
        }
    }

    private static string Sentence(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}{(text.EndsWith('.') ? "" : ".")}";
}
