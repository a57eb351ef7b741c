using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A charge that wants heat from the boilers, running or planned.</summary>
/// <param name="Kiln">Its kiln.</param>
/// <param name="Name">Its number, or its stacks where it has none yet.</param>
/// <param name="Orders">Orders that wait for it.</param>
/// <param name="Bf">Their footage.</param>
/// <param name="In">Day it goes in.</param>
/// <param name="Dry">Day it is dry, likely.</param>
/// <param name="Runs">It stands in its kiln already.</param>
internal sealed record HeatUse(Kiln Kiln, string Name, IReadOnlyList<string> Orders, double Bf, DateOnly In, DateOnly Dry, bool Runs)
{
    public bool IsIn(DateOnly day) => In <= day && day <= Dry;

    /// <summary>Charges as the season's plan has them.</summary>
    public static IReadOnlyList<HeatUse> ByPlan(YardState state, SeasonSheet sheet) =>
    [
        .. sheet.Kilns.SelectMany(row => row.Charges).Where(charge => YardHeat.Holding(state.Kilns[charge.Kiln]) is not null).Select(charge => new HeatUse(
            state.Kilns[charge.Kiln], charge.Tag ?? string.Join(", ", charge.Stacks.Select(stack => stack.Tag)), [.. charge.Serves.Select(line => line.Split('/')[0]).Distinct()], charge.VolumeBf, charge.In.Day(), charge.Out.Day(), charge.Tag is not null)),
    ];

    /// <summary>Charges as the book has them: those that run, and those planned by hand.</summary>
    public static IReadOnlyList<HeatUse> ByBook(YardState state) =>
    [
        .. state.Charges.Values.Where(charge => charge.IsRunning && YardHeat.Holding(state.Kilns[charge.Kiln]) is not null)
            .Select(charge => new HeatUse(state.Kilns[charge.Kiln], charge.Tag, OrdersOf(state, charge.Stacks), charge.FootageIn.Count, charge.LoadedAt.Day(), ChargeEnd.OutDay(state, charge) ?? DateOnly.MaxValue, true)),
        .. state.PlannedCharges.Values.Where(planned => !state.Charges.ContainsKey(planned.Tag) && YardHeat.Holding(state.Kilns[planned.Kiln]) is not null)
            .Select(planned => new HeatUse(state.Kilns[planned.Kiln], planned.Tag, OrdersOf(state, planned.Stacks), planned.Stacks.Sum(tag => state.Stacks.GetValueOrDefault(tag)?.Footage.Count ?? 0.0), planned.InOn, planned.OutOn, false)),
    ];

    private static IReadOnlyList<string> OrdersOf(YardState state, IEnumerable<string> stacks) => [.. stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)?.ReservedFor).OfType<string>().Distinct()];
}
