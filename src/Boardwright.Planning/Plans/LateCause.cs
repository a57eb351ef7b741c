namespace Boardwright.Planning;

/// <summary>What keeps an order from being on time.</summary>
public enum LateCause
{
    /// <summary>There is not enough wood for it.</summary>
    NoStock,

    /// <summary>Its wood is not dry before, whatever else is done.</summary>
    NotDry,

    /// <summary>With more heat it would be less late.</summary>
    Heat,

    /// <summary>With people there at all hours it would be less late.</summary>
    Crew,

    /// <summary>With another kiln it would be less late.</summary>
    KilnFull,

    /// <summary>It would be less late if other orders came later.</summary>
    OtherOrders,

    /// <summary>No one thing alone makes it less late.</summary>
    SeveralThings,
}
