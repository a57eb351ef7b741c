using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Dry stacks whose order asks for dressed wood; and those on their way out of a kiln.</summary>
internal static class StacksToPlane
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => line is { IsFilled: false, Asked.DressedMm: not null }).Select(line => line.Asked))
            {
                foreach (var stack in line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().Where(stack => stack.Stage is StackStage.KilnDried or StackStage.AirDrying or StackStage.InKiln))
                {
                    var dry = stack.Stage == StackStage.KilnDried;
                    var hours = stack.Footage.Count / (state.Setting("planer_output") ?? 350.0);
                    yield return new(stack.Tag, dry ? $"Plane {stack.Tag} to {line.DressedMm:0.#} mm for {order.Tag}." : $"Keep {hours:0.#} h of planing free for {order.Tag}.",
                        $"{order.Customer}, {line.Goods}, due {DayWords.Of(line.DueOn, state.Today)}. {(dry ? "It is dry." : $"{stack.Tag} is not dry yet: {stack.Moisture?.Mean?.Percent:0.0} %.")}",
                        new("Planing", $"{hours:0.#}", "h", $"{stack.Footage.Count:#,0} bf, both faces") { Source = "planer output of the house", Method = "green-target", Inputs = [("output", $"{state.Setting("planer_output") ?? 350.0:0} bf/h"), ("dressed to", $"{line.DressedMm:0.#} mm")] },
                        new(order.LatePerDayMoney, Math.Max(1, line.DueOn.DayNumber - state.Today.DayNumber), "a day late"), Duties.Planer, $"/stacks/{stack.Tag}", $"See {stack.Tag}");
                }
            }
        }
    }
}
