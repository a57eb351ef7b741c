using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>A pin meter reading made comparable with an oven: first for temperature, then for species.</summary>
/// <param name="TemperatureCorrected">The reading as at room temperature, on the scale the meter is set to.</param>
/// <param name="Corrected">Moisture content of this wood; null when the change of species is unknown.</param>
/// <param name="Usable">Whether the reading may be relied on: from 7 to 28 %.</param>
/// <param name="ErrorPoints">How far the oven may differ, points of moisture content either way.</param>
/// <param name="Note">What to know and what to do, in sentences; empty when there is nothing.</param>
/// <remarks>
/// <para>Pin meters are trusted from 7 to 28 %: below, the current is too small; above fibre saturation it hardly depends on moisture.</para>
/// <para>Species: the corrected reading is turned into the resistance of the wood the meter is set to, and that into the moisture
/// content of this wood with the same resistance.</para>
/// <para>Error: 1 point, and 2 where the species is unknown or the wood is below freezing or hot (common practice).</para>
/// </remarks>
/// <source id="conners-for-128" locator="range of pin meters"/>
/// <source id="james-1988" locator="FPL-GTR-6"/>
/// <method page="docs/methods/moisture-meter.md"/>
public sealed record MeterReading(MoistureContent TemperatureCorrected, MoistureContent? Corrected, bool Usable, double ErrorPoints, string Note)
{
    /// <summary>True for frozen wood above the usable range: ice does not lead as water does, and what the meter shows is no moisture content, raw or corrected (common practice, no source).</summary>
    public bool IsFrozenAndWet { get; init; }

    /// <summary>The wettest a meter is relied on: what it shows above this is "above range", no number to reckon with.</summary>
    public static MoistureContent UsableMost { get; } = MoistureContent.FromPercent(UsablePercentMax);

    private const double UsablePercentMin = 7.0;
    private const double UsablePercentMax = 28.0;

    // A reading of just 28 % stays usable when degrees are converted there and back.
    private const double Rounding = 1e-9;
    private const double FreezingFahrenheit = 32.0;
    private const double ErrorUsual = 1.0;
    private const double ErrorDoubtful = 2.0;

    /// <summary>Corrects a reading.</summary>
    /// <param name="reading">What the meter shows.</param>
    /// <param name="wood">Temperature of the wood, not of the air; the refusal calls it "temperature".</param>
    /// <param name="species">The wood.</param>
    /// <param name="setTo">The wood the meter is set to.</param>
    /// <param name="rule">How temperature is corrected.</param>
    public static Outcome<MeterReading> Correct(MoistureContent reading, Temperature wood, Species species, MeterSetting setTo, MeterTemperatureRule rule)
    {
        if (wood.Celsius is < -40.0 or > 100.0)
            return new Refusal("temperature", string.Create(CultureInfo.InvariantCulture, $"{wood.Celsius:0.#} C"), "wood at -40 to 100 C (-40 to 212 F)");

        var atRoom = MeterTemperature.Correct(reading, wood, rule);
        var notes = new List<string>();
        var corrected = ForSpecies(atRoom, species, setTo, notes);
        var tooDry = Math.Min(reading.Percent, (corrected ?? atRoom).Percent) < UsablePercentMin - Rounding;
        var tooWet = Math.Max(reading.Percent, (corrected ?? atRoom).Percent) > UsablePercentMax + Rounding;
        if (tooDry)
            notes.Add("Under 7 %: pin meters do not read so low; write it down as under 7, or use the oven.");
        var frozenAndWet = tooWet && wood.Fahrenheit < FreezingFahrenheit;
        if (frozenAndWet)
            notes.Add("No moisture content: frozen and above fibre saturation, only the raw reading is kept. Weigh a sample, or cut a section and use the oven.");
        else if (tooWet)
            notes.Add("Not usable above 28 %, near and above fibre saturation: cut a section and use the oven.");

        var doubtful = corrected is null | AddTemperatureNotes(wood, notes);
        return new MeterReading(atRoom, corrected, !tooDry && !tooWet, doubtful ? ErrorDoubtful : ErrorUsual, string.Join(' ', notes)) { IsFrozenAndWet = frozenAndWet };
    }

    private static MoistureContent? ForSpecies(MoistureContent atRoom, Species species, MeterSetting setTo, List<string> notes)
    {
        if (setTo.IsFor(species))
            return atRoom;

        var from = setTo.Resistance;
        var to = MeterResistance.Find(species.MeterGroup);
        if (from is null || to is null)
        {
            notes.Add($"Species correction unknown: no resistance is published for {(to is null ? species.CommonName : setTo.Name)}; cut an oven section before relying on it.");
            return null;
        }

        if (from.LogMegohms(atRoom.Percent) is { } resistance && to.Percent(resistance) is { } percent)
            return MoistureContent.FromPercent(percent);

        notes.Add(string.Create(CultureInfo.InvariantCulture, $"Species correction unknown: {atRoom.Percent:0.0} % lies outside the resistances published for {from.Group} ({from.PercentMin:0} to {from.PercentMax:0} %) and {to.Group} ({to.PercentMin:0} to {to.PercentMax:0} %)."));
        return null;
    }

    // True when the temperature makes the reading doubtful.
    private static bool AddTemperatureNotes(Temperature wood, List<string> notes)
    {
        if (wood.Fahrenheit < FreezingFahrenheit)
            notes.Add("The wood is below freezing: frost and ice mislead a meter; bring a board indoors and read it again.");
        else if (wood.Fahrenheit < 50.0)
            notes.Add("Cold wood is wetter than it reads; take the wood's temperature each time.");
        else if (wood.Fahrenheit > 90.0)
            notes.Add("Hot wood is drier than it reads: let a board cool, or weigh a sample.");

        return wood.Fahrenheit is < FreezingFahrenheit or > 90.0;
    }
}
