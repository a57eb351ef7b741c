using Boardwright.Quantities;
using Boardwright.Sawing;

namespace Boardwright.Yard.UseCases;

/// <summary>A thickness and a pattern to try on a log instead of the planned ones, as written in an address; nothing means as planned.</summary>
public sealed record LogChoice(NominalThickness? Thickness, SawPattern? Pattern, OrdersWanted Orders = OrdersWanted.Missing)
{
    public static Outcome<LogChoice> Read(string? thickness, string? pattern, string? orders = null)
    {
        SawPattern? chosen = null;
        var wanted = OrdersWanted.Missing;
        if (!string.IsNullOrEmpty(orders) && (!Enum.TryParse(orders, ignoreCase: true, out wanted) || !Enum.IsDefined(wanted)))
            return new Refusal("orders", orders, "missing, whole or none");
        if (!string.IsNullOrEmpty(pattern))
        {
            if (!Enum.TryParse<SawPattern>(pattern, ignoreCase: true, out var known) || !Enum.IsDefined(known))
                return new Refusal("pattern", pattern, "live, cant, quarter or boule");
            chosen = known;
        }

        return string.IsNullOrEmpty(thickness)
            ? new LogChoice(null, chosen, wanted)
            : Book.QuartersTyped.Of(null, "thickness", thickness).Then<LogChoice>(nominal => new LogChoice(nominal, chosen, wanted));
    }
}
