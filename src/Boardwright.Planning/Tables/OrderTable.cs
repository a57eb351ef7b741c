namespace Boardwright.Planning;

/// <summary>An order in whole numbers: days, tenths of a board foot, cents.</summary>
internal sealed class OrderTable
{
    /// <summary>An order that the plan does not meet counts as ready this many days after the plan's end.</summary>
    public const int DaysAfterEndWhenUnmet = 7;

    public OrderTable(Order order, IReadOnlyList<StackTable> stacks, PlanInput input)
    {
        var indexes = stacks.Select((stack, index) => (stack.Stack.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index, StringComparer.Ordinal);
        Order = order;
        DueDay = input.Calendar.DayNumber(order.Due);
        QuantityTenths = Tenths.Up(order.Quantity.Count);
        CentsPerDay = Cents.Of(order.LateMoneyPerDay + order.Importance * input.ImportanceMoneyPerDay);
        UnmetDays = DueDay >= input.Calendar.Days ? 0 : input.Calendar.Days - DueDay + DaysAfterEndWhenUnmet;
        Wood = [.. order.Wood.Select(wood => new OrderWoodTable(indexes[wood.Stack], wood.Kilned, Cents.Of(wood.ExtraMoney)))];
    }

    public Order Order { get; }

    public int DueDay { get; }

    public int QuantityTenths { get; }

    public long CentsPerDay { get; }

    /// <summary>Days late that count for an order the plan does not meet; none when it is due after the plan's end.</summary>
    public int UnmetDays { get; }

    public OrderWoodTable[] Wood { get; }
}

/// <summary>Wood of an order by the stack's index.</summary>
internal readonly record struct OrderWoodTable(int Stack, bool Kilned, long ExtraCents);
