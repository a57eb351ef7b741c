namespace Boardwright.Sawing;

/// <summary>The log lying in one turn: blade heights on the grid, what each flitch brings, and the most above and below every height.</summary>
internal sealed class LogLie
{
    private readonly CuttingSpace space;
    private LayerBound? up;
    private LayerBound? down;
    private LayerBound? scratch;

    public LogLie(CuttingSpace space, double turnDegrees)
    {
        this.space = space;
        TurnDegrees = turnDegrees;
        Log = TurnedLog.Of(space.Stations, turnDegrees);
        Trim = new FlitchTrim(space, Log);
        Count = (int)Math.Ceiling((Log.Highest - Log.Lowest) / space.GridMm) + 1;
    }

    public double TurnDegrees { get; }

    public TurnedLog Log { get; }

    public FlitchTrim Trim { get; }

    /// <summary>Number of heights on the grid, from the lowest point of the wood.</summary>
    public int Count { get; }

    /// <summary>What every flitch brings at most.</summary>
    public FlitchField Field => field ??= new FlitchField(space, this);

    /// <summary>The most above every height.</summary>
    public LayerBound Up => up ??= LayerBound.Up(space, this, Field.Whole);

    /// <summary>For runs over other values.</summary>
    public LayerBound Scratch => scratch ??= LayerBound.For(space, this);

    /// <summary>The most below every height.</summary>
    public LayerBound Down => down ??= LayerBound.Down(space, this, Field.Whole);

    public double Height(int index) => Log.Lowest + (index * space.GridMm);
}
