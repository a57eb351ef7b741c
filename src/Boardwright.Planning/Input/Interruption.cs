using System.Globalization;

using Boardwright.Quantities;

namespace Boardwright.Planning;

/// <summary>A kiln or boiler that cannot be used for some days.</summary>
/// <param name="Equipment">The kiln or boiler.</param>
/// <param name="From">First day without it.</param>
/// <param name="To">Last day without it.</param>
public sealed record Interruption(string Equipment, DateOnly From, DateOnly To)
{
    private const string Form = "EQUIPMENT:FROM..TO with dates such as K1:2026-11-09..2026-11-16, the last day not before the first";

    /// <summary>Reads <c>EQUIPMENT:FROM..TO</c>.</summary>
    /// <param name="what">The option or field, for the refusal.</param>
    /// <param name="text">The text.</param>
    public static Outcome<Interruption> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var colon = text.LastIndexOf(':');
        var days = text[(colon + 1)..].Split("..");
        return colon > 0 && days.Length == 2 && Day(days[0], out var from) && Day(days[1], out var to) && from <= to
            ? new Interruption(text[..colon].Trim(), from, to)
            : new Refusal(what, text, Form);
    }

    /// <summary>As <see cref="Read"/> takes it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Equipment}:{From:yyyy-MM-dd}..{To:yyyy-MM-dd}");

    /// <summary>The input as it would be. A charge standing in the kiln dries on after the pause: the charge's clock stops.</summary>
    /// <returns>Refused when the yard has no such kiln or boiler.</returns>
    public Outcome<PlanInput> ApplyTo(PlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var steps = input.Calendar.StepsOf(From, To);
        if (input.Kilns.Any(kiln => kiln.Id == Equipment))
        {
            return input with
            {
                Kilns = [.. input.Kilns.Select(kiln => kiln.Id == Equipment ? kiln with { Outages = [.. kiln.Outages, steps] } : kiln)],
                Started = [.. input.Started.Select(charge => charge.Kiln == Equipment ? Paused(charge, steps, input.Calendar) : charge)],
            };
        }

        return input.Heat.Boilers.Any(boiler => boiler.Id == Equipment)
            ? input with { Heat = input.Heat with { Boilers = [.. input.Heat.Boilers.Select(boiler => boiler.Id == Equipment ? boiler with { Outages = [.. boiler.Outages, steps] } : boiler)] } }
            : new Refusal("equipment", Equipment, string.Join(", ", input.Kilns.Select(kiln => kiln.Id).Concat(input.Heat.Boilers.Select(boiler => boiler.Id))));
    }

    private static StartedCharge Paused(StartedCharge charge, StepRange steps, PlanCalendar calendar)
    {
        var pause = Elapsed.FromHours(steps.Length * calendar.StepHours);
        var from = Elapsed.FromHours(steps.From * calendar.StepHours);
        return charge with
        {
            DryHalf = charge.DryHalf > from ? charge.DryHalf + pause : charge.DryHalf,
            DryMost = charge.DryMost > from ? charge.DryMost + pause : charge.DryMost,
        };
    }

    private static bool Day(string text, out DateOnly day) => DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
