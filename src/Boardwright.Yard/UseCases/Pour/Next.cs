using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What to do next with a pour.</summary>
internal static class PourNext
{
    public static (string Do, string Why) For(Pour pour, PourCure cure, PourSoft? soft, IReadOnlyList<string> faults, PourLayers layers, PourBucket bucket)
    {
        if (soft is { Causes: [var cause, ..] })
            return cause.CanBeSaved
                ? (Sentence(cause.Remedy), $"{Sentence(cause.Cause)} By the label {Worth(cure, soft.Hour)}")
                : (Sentence(cause.Remedy), Sentence(cause.Cause));
        if (pour.DemouldedAt is not null)
            return ("Flatten, finish, hand over.", $"Seen: {pour.Seen}.");
        if (bucket is { Liquid.Count: 0, Set: [.., var set] })
            return ("Weigh a fresh mix; that one has set in the bucket.", $"Mixed {set.At:ddd d MMM HH:mm}, it is past the label’s gel time. Pour none of it. Let it get cold outdoors in its metal can, then throw it away as your local rules say.");
        if (bucket.Liquid.Count > 0 && faults.Count == 0)
            return ("Pour it at once, then write it poured.", "Mixed resin warms itself in the bucket.");
        if (pour.PouredAt is not null && PourSoft.WillNotCure(cure.Resin, pour))
            return ("Scrape it out and pour again.", "As weighed it never gets hard, and no warmth mends that.");
        if (pour is { PouredAt: not null, IsFull: false })
            return layers.CoolAt is { } cool
                ? ($"Pour the next layer, {layers.NextMm(pour):0.#} mm, from {cool:ddd d MMM HH:mm}.", "The one before has peaked and cooled by then; sooner both heat as one. Where it is hard already, sand and wipe it first.")
                : ("Cool the shop, then ask again.", "At these temperatures the layer before does not cool, and the next would heat with it.");
        if (pour.PouredAt is { } filled)
        {
            var edge = cure.Model?.DemouldEdgeHour ?? cure.LabelDemouldHour;
            return edge is { } hours
                ? ($"Demould from {filled.AddHours(hours):ddd d MMM HH:mm}, by the edge.", "Test the thinnest place with a nail first; a cold night moves the hour. Write the shop’s temperature morning and evening.")
                : ("Warm the room, then ask again.", "At these temperatures the slowest resin is not hard within 30 days.");
        }

        if (faults.Count > 0)
            return ("Do not pour it like this.", $"Dry the wood, {(layers.Layers > 1 ? $"pour {layers.Layers} layers of {layers.LayerMm(pour):0.#} mm" : "make it thinner")}, or take another day; the reasons stand below.");
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
