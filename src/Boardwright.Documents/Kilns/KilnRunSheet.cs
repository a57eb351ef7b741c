using Boardwright.Documents.Setting;
using Boardwright.Quantities;

namespace Boardwright.Documents.Kilns;

/// <summary>Kiln run sheet: first sheet at the door (settings, samples, cautions), second the schedule and the log to write in.</summary>
public static class KilnRunSheet
{
    /// <param name="paper">A4 or letter. Default A4.</param>
    /// <exception cref="ArgumentException">A sample has not one weighing (or null) for each weighing day.</exception>
    public static byte[] Render(KilnRunSheetContent content, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        foreach (var sample in content.Samples.Where(sample => sample.Weighings.Count != content.WeighingDays.Count))
            throw new ArgumentException($"Sample {sample.Number} has {sample.Weighings.Count} weighings for {content.WeighingDays.Count} days.");

        var head = new FormHead("Kiln run sheet", $"{content.Kiln}, charge {content.Charge}", content.Yard, Print.Moment(content.At));
        using var form = new Form(paper ?? Paper.A4, $"Kiln run sheet {content.Charge}", content.At, head);
        var day = DateOnly.FromDateTime(content.At).DayNumber - content.Started.DayNumber + 1;
        form.Paragraph($"{content.Load}. Target {Print.Percent(content.Target)}. In the kiln since {Print.Day(content.Started)}, day {Print.Number(day)}.", 11.0);
        form.Y += 2.0;
        SettingBlock.Draw(form, content);
        foreach (var warning in content.Warnings)
            Flag.Draw(form, "Mind", warning);

        SampleTable.Draw(form, content);
        CautionBox.Draw(form, "Before you go in", KilnCautions.For(content.Now), KilnCautions.Deference);
        DrawSchedule(form, content);
        KilnLog.Draw(form, content);
        return form.Finish();
    }

    private static void DrawSchedule(Form form, KilnRunSheetContent content)
    {
        if (content.Steps.Count == 0)
            return;

        Column[] columns =
        [
            new("", 16, Align.Centre, Bold: true), new("Step", 12), new("While wettest\nhalf above, %", 24, Bold: true), new("Dry bulb,\n°F", 20, Bold: true), new("Wet bulb,\n°F", 20, Bold: true),
            new("Dry bulb,\n°C", 20), new("Wet bulb,\n°C", 20), new("Depression,\n°F", 24), new("Humidity,\n%", 20), new("EMC,\n%", 16),
        ];
        var rows = content.Steps.Select((step, i) => new Row(
        [
            i == content.StepSet ? "set" : i == content.StepNow ? "by wood" : "",
            Print.Number(i + 1),
            step.Lasts is { } lasts ? $"for {Print.Short(lasts.Hours, 1)} h" : step.MoistureAbove == MoistureContent.OvenDry ? "to the end" : Print.Short(step.MoistureAbove.Percent, 1),
            Print.Number(step.DryBulb.Fahrenheit),
            Print.Number(step.WetBulb.Fahrenheit),
            Print.Number(step.DryBulb.Celsius),
            Print.Number(step.WetBulb.Celsius),
            Print.Number((step.DryBulb - step.WetBulb).FahrenheitDegrees),
            Print.Number(step.Humidity.Percent),
            Print.Number(step.Emc.Percent, 1),
        ], Marked: i == content.StepSet)).ToList();
        form.Heading(content.ScheduleCode is { } code ? $"Schedule {code}" : "Schedule", (rows.Count * 6.5) + 20.0);
        new Table(columns) { RowMm = 6.5 }.Draw(form, rows);
        if (content.ScheduleSource is { } source)
            form.Paragraph("Schedule from: " + source);
        if (content.StepNow is { } wood && wood != content.StepSet)
            form.Paragraph($"Set: {(content.StepSet is null ? "no step of the schedule" : "the step that is marked")}. By wood: the step the samples are in; change to it only as “next” says.");
    }
}
