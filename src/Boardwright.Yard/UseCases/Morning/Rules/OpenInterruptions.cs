using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A charge whose clock stands still: power, door, heat or a sensor.</summary>
internal static class OpenInterruptions
{
    public static IEnumerable<DayTask> Of(YardState state) =>
        from charge in state.Charges.Values
        where charge.IsRunning
        from gap in charge.Gaps
        where gap.To is null
        let worth = WoodWorth.Of(state, charge)
        select new DayTask(charge.Kiln, $"Bring {charge.Tag} back: heat first, spray later.", $"{Words(gap.Cause)} since {gap.From:ddd d MMM HH:mm}. The charge’s clock stands still until it is written as over.",
            new("Wood in it", $"{charge.FootageIn.Count:#,0}", "bf", $"wettest {charge.Wettest?.Moisture.Percent:0.0} %") { Source = $"entry {gap.Entry}", Inputs = [("cause", Words(gap.Cause)), ("from", $"{gap.From:d MMM HH:mm}")] },
            new(worth * 0.1m, 1, $"a tenth of the charge’s {worth:#,0}: common practice, for the order of this sheet"), Duties.Kilns | Duties.Office, $"/charges/{charge.Tag}", $"See {charge.Tag}");

    private static string Words(InterruptionCause cause) => cause switch
    {
        InterruptionCause.PowerCut => "Power cut",
        InterruptionCause.DoorOpen => "Door open",
        InterruptionCause.HeatLost => "Heat lost",
        InterruptionCause.LowWater => "Low water in the boiler",
        InterruptionCause.Sensor => "A sensor not to be believed",
        _ => "Interrupted",
    };
}
