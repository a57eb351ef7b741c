namespace Boardwright.Web.Drawings;

/// <summary>The way of wood from its logs to what left: one row of bars for each form it took, as wide as its footage, and what went from one to the next.</summary>
/// <param name="Title">One sentence: what it shows and its main figure.</param>
/// <param name="Rows">Earliest form first.</param>
/// <param name="Bands">What went from bar to bar.</param>
public sealed record WoodWayDrawing(string Title, IReadOnlyList<WoodWayRow> Rows, IReadOnlyList<WoodWayBand> Bands);

/// <summary>One form of the wood.</summary>
/// <param name="Caption">Such as "out of charge D-41, 887 bf, 7.1 %".</param>
/// <param name="Bars">From left to right.</param>
public sealed record WoodWayRow(string Caption, IReadOnlyList<WoodWayBar> Bars);

/// <summary>One item.</summary>
/// <param name="Key">Names it among the bars.</param>
/// <param name="Label">Written on it where there is room.</param>
/// <param name="Species">Its pattern; null for blank.</param>
/// <param name="Bf">Its width, board feet.</param>
/// <param name="Path">Its page.</param>
/// <param name="IsSelf">It is what was asked about.</param>
public sealed record WoodWayBar(string Key, string Label, string? Species, double Bf, string Path, bool IsSelf);

/// <summary>Footage that went from one bar to another.</summary>
public sealed record WoodWayBand(string From, string To, double Bf);
