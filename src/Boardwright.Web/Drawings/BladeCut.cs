namespace Boardwright.Web.Drawings;

/// <summary>One pass of the blade.</summary>
/// <param name="Letter">Its name in the list of cuts.</param>
/// <param name="AbovePithInches">Upper edge of the kerf from the pith, up positive.</param>
/// <param name="Height">Its height above the bed as it is set and read, such as "17.26".</param>
public sealed record BladeCut(string Letter, double AbovePithInches, string Height);
