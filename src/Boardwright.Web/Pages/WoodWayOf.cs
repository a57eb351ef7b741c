using System.Globalization;
using Boardwright.Web.Drawings;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>A history as a drawing: its rows, captions and bands.</summary>
internal static class WoodWayOf
{
    public static WoodWayDrawing Drawing(WoodHistory history)
    {
        var rows = history.Steps.Where(step => step.PartBf > 0.0).GroupBy(step => step.Level).OrderBy(level => level.Key)
            .Select(level => new WoodWayRow(Caption([.. level]), [.. level.Select(step => new WoodWayBar(step.Step.Key, step.Step.Tag, step.Step.Species?.CommonName, step.PartBf, step.Path, step.IsSelf))])).ToList();
        return new($"{history.Title}: {string.Join(", then ", rows.Select(row => row.Caption))}.", rows, [.. history.Flows.Select(flow => new WoodWayBand(flow.From, flow.To, flow.Bf))]);
    }

    private static string Caption(IReadOnlyList<HistoryStep> level)
    {
        var bf = string.Create(CultureInfo.InvariantCulture, $"{level.Sum(step => step.PartBf):#,0} bf");
        if (level.Count > 1 || level[0].Step.Form == WoodForm.Log)
            return $"{Words(level[0].Step.Form, level.Count)}, {bf}{(level[0].Step.Form == WoodForm.Log ? " sawn" : "")}";
        var moisture = level[0].Step.Moisture is { } mc ? string.Create(CultureInfo.InvariantCulture, $", {mc.Percent:0.0} %") : "";
        return $"{level[0].Step.Tag} {(level[0].Step.Form == WoodForm.Shipped ? "left" : level[0].Words)}, {bf}{moisture}";
    }

    private static string Words(WoodForm form, int count) => form switch
    {
        WoodForm.Log => count == 1 ? "one log" : $"{count} logs",
        WoodForm.Stack => $"{count} stacks",
        WoodForm.InKiln or WoodForm.FromKiln => $"{count} stacks through a kiln",
        WoodForm.Pack => $"{count} packs",
        WoodForm.Shipped => $"{count} loads",
        _ => $"{count} items",
    };
}
