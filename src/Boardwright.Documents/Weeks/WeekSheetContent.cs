namespace Boardwright.Documents.Weeks;

/// <summary>One thing of the week.</summary>
/// <param name="Day">Its day.</param>
/// <param name="At">Its hour; null for the whole day.</param>
/// <param name="What">What is done or due: "Load K1".</param>
/// <param name="Which">With what: stacks, wood, customer.</param>
public sealed record WeekLine(DateOnly Day, TimeOnly? At, string What, string Which);

/// <summary>What the week sheet shows.</summary>
/// <param name="Yard">Whose it is.</param>
/// <param name="First">First of its seven days.</param>
/// <param name="Made">When the plan behind it was made.</param>
/// <param name="Lines">What is done and due, in any order; days outside the week are left out.</param>
public sealed record WeekSheetContent(string Yard, DateOnly First, DateTime Made, IReadOnlyList<WeekLine> Lines);
