using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;

namespace Boardwright.Drying.Tests;

/// <summary>What tests start from: outcomes that must be done, species by name.</summary>
internal static class Given
{
    public static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new Xunit.Sdk.XunitException($"expected an answer, got {Why(outcome)}");

    public static Species Species(string name) => Done(SpeciesTable.Find("species", name));

    public static Length Thickness(string text) => Done(Read.Length("thickness", text));

    public static MoistureContent Moisture(double percent) => MoistureContent.FromPercent(percent);

    private static string Why<T>(Outcome<T> outcome) => outcome switch
    {
        Outcome<T>.Refused(var reasons) => string.Join("; ", reasons),
        Outcome<T>.NoAnswer(var why) => why,
        _ => outcome.ToString(),
    };
}
