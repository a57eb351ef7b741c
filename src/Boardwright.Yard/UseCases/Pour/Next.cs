using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What to do next with a pour.</summary>
internal static class PourNext
{
    public static (string Do, string Why) For(Pour pour, PourCure cure, PourSoft? soft, IReadOnlyList<string> faults)
    {
        if (soft is { Causes: [var cause, ..] })
            return cause.CanBeSaved
                ? (Sentence(cause.Remedy), $"{Sentence(cause.Cause)} By the label {Worth(cure, soft.Hour)}")
                : (Sentence(cause.Remedy), Sentence(cause.Cause));
        if (pour.DemouldedAt is not null)
            return ("Flatten, finish, hand over.", $"Seen: {pour.Seen}.");
        if (pour.PouredAt is { } poured)
        {
            var edge = cure.Model?.DemouldEdgeHour ?? cure.LabelDemouldHour;
            return edge is { } hours
                ? ($"Demould from {poured.AddHours(hours):ddd d MMM HH:mm}, by the edge.", "Test the thinnest place with a nail first; a cold night moves the hour. Write the shop’s temperature morning and evening.")
                : ("Warm the room, then ask again.", "At these temperatures the slowest resin is not hard within 30 days.");
        }

        if (faults.Count > 0)
            return ("Do not pour it like this.", "Dry the wood, make it thinner, or take another day; the reasons stand below.");
        if (pour.Mixes.Count > 0)
            return ("Pour it at once, then write it poured.", "Mixed resin warms itself in the bucket.");
        var late = cure.Model?.DemouldEdgeHour is { } needed && needed > cure.PlannedHour;
        return late
            ? ($"Move the demould day, or warm the room: the edge needs {cure.Model!.DemouldEdgeHour:0} h, {cure.PlannedHour:0} are planned.", "A warm room after the peak helps the thin edge; before the peak it only makes the centre hotter.")
            : ("Weigh both parts and mix.", $"By the planned day the edge has had {cure.PlannedHour:0} h; it needs {(cure.Model?.DemouldEdgeHour ?? cure.LabelDemouldHour) ?? 0.0:0}.");
    }

    private static string Worth(PourCure cure, double hour) => cure.Resin.Label.Demould is { } label
        ? $"{hour:0} h in this shop were worth {cure.Worth(hour).Hours:0.0} of {label.Hours:0} h; {cure.WarmHoursNeeded(hour):0.0} h at 28 °C were missing in the thick part."
        : "nothing is known.";

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";
}
