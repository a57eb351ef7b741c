namespace Boardwright.Documents.Setting;

/// <summary>What stands at the head of every sheet.</summary>
/// <param name="Kind">What the paper is: "Kiln run sheet".</param>
/// <param name="Subject">Which one: "K1, charge C-61".</param>
/// <param name="Yard">Whose it is.</param>
/// <param name="When">Day, or day and hour, as it shall stand in the head.</param>
internal sealed record FormHead(string Kind, string Subject, string Yard, string When);
