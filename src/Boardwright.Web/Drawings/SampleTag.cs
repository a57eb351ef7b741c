namespace Boardwright.Web.Drawings;

/// <summary>A kiln sample or gauge where it hangs.</summary>
/// <param name="Name">Its number.</param>
/// <param name="Value">What it says, such as "14.4".</param>
/// <param name="Across">Place from the left, 0 to 1.</param>
/// <param name="Down">Place from the top, 0 to 1.</param>
/// <param name="Heavy">The one that decides (the wettest): heavy frame.</param>
public sealed record SampleTag(string Name, string Value, double Across, double Down, bool Heavy = false);
