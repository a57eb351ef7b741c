namespace Boardwright.Sawing;

/// <summary>The best of several in a fixed order, looked at in any: of equals the first of the order.</summary>
internal record struct BestFound(double Value)
{
    /// <summary>Place in the order; -1 for what was asked for, which nothing equals.</summary>
    public int Place { get; private set; } = -1;

    /// <summary>Whether something of at most a value could be it.</summary>
    public readonly bool IsPassedBy(double most, int place) => most > Value || (most == Value && place < Place);

    /// <summary>What something at a place must pass, in money of whole quanta.</summary>
    public readonly double Need(int place, double quantum) => place < Place ? Value - quantum : Value;

    /// <summary>Takes it if it is the best.</summary>
    public bool Take(double value, int place)
    {
        if (!IsPassedBy(value, place))
            return false;

        (Value, Place) = (value, place);
        return true;
    }
}
