using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Forecast of a stack drying in the open air, with a band.</summary>
/// <remarks>
/// <para>Boards (128 unless asked otherwise), different as stacks of one description are, are each stepped through the weather of one of 16 seasons that could come
/// (see <see cref="Board.BoardEnsemble"/> and <see cref="DryingCoefficients"/>), hour by hour where the weather is known by the hour; the band is the spread of
/// their means. Wood gains as well as loses, and a stack that is not dry in autumn is carried over the winter. Readings move the band and its rate, and are told
/// back to the days before them.</para>
/// <para>Validity: 0.25 to 6 in, -40 to 50 C.</para>
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class AirDrying
{
    internal const int Scenarios = 16;
    private const int MembersMax = 4096;

    /// <summary>When the stack will be dry.</summary>
    /// <returns>The forecast; a refusal of from, to, thickness, start, readings or horizon outside what the model is for.</returns>
    public static Outcome<AirDryingForecast> Forecast(AirDryingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return Problem(input) is { } problem ? problem : new AirDryingRun(input, input.Members, Scenarios).Forecast();
    }

    /// <summary>A whole yard, stack by stack on all cores; each answer as if it were asked for alone.</summary>
    public static IReadOnlyList<Outcome<AirDryingForecast>> Forecasts(IReadOnlyList<AirDryingInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var answers = new Outcome<AirDryingForecast>[inputs.Count];
        Parallel.For(0, inputs.Count, stack => answers[stack] = Forecast(inputs[stack]));
        return answers;
    }

    /// <summary>Days the middle board takes in the weather as given, without chance: what the coefficients are fitted with. Null when not dry within the look ahead.</summary>
    internal static double? CentralDays(AirDryingInput input, double coefficientM2PerS) => new AirDryingRun(input, 1, 1, coefficientM2PerS).Days();

    private static Refusal? Problem(AirDryingInput input) =>
        input.Thickness.Inches is < 0.25 or > 6.0 ? new Refusal("thickness", Number(input.Thickness.Inches) + "in", "0.25 to 6 in")
        : input.From.Percent is < 4.0 or > 250.0 ? new Refusal("from", Number(input.From.Percent) + "%", "4% to 250%")
        : input.To.Percent is < 4.0 or > 250.0 ? new Refusal("to", Number(input.To.Percent) + "%", "4% to 250%")
        : input.HorizonDays is < 1 or > 1500 ? new Refusal("horizon", Number(input.HorizonDays), "1 to 1500 days")
        : input.Members is < Scenarios or > MembersMax || input.Members % Scenarios != 0 ? new Refusal("members", Number(input.Members), $"{Scenarios} to {MembersMax}, whole sixteens")
        : input.Weather.On(input.Start) is null ? new Refusal("start", Iso(input.Start), $"a day of the weather, {Iso(input.Weather.First)} to {Iso(input.Weather.Last)}; weather of a whole year serves any day")
        : null;

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
