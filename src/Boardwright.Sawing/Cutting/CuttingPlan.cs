using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A way to open a log, worked out from its shape and a price list.</summary>
/// <remarks>Knots and grade are not seen: a board takes the best priced row whose size (and grain) it meets.</remarks>
/// <method page="docs/methods/sawing-plan.md"/>
public sealed record CuttingPlan
{
    /// <summary>Pattern sawn.</summary>
    public required SawPattern Pattern { get; init; }

    /// <summary>First turn of the log, clockwise from the unturned log, looking at the small end.</summary>
    public required Angle Rotation { get; init; }

    /// <summary>Boards in the order they come free.</summary>
    public required IReadOnlyList<PlannedBoard> Boards { get; init; }

    /// <summary>Ways of lying on the bed with their cuts, in order.</summary>
    public required IReadOnlyList<PlanOpening> Openings { get; init; }

    /// <summary>Volume of the log.</summary>
    public required Volume LogVolume { get; init; }

    /// <summary>No plan of any pattern and turn under these rules and prices can be worth more.</summary>
    public required double UpperBoundMoney { get; init; }

    /// <summary>Value of all boards.</summary>
    public double ValueMoney => Boards.Sum(board => board.ValueMoney);

    /// <summary>Footage of all boards, nominal, nothing rounded but width and length steps.</summary>
    public BoardFeet Footage => BoardFeet.From(Boards.Sum(board => board.Footage.Count));

    /// <summary>Green boards as sawn over the log, by solid volume.</summary>
    public Share SawnShare => Share.FromFraction(Boards.Sum(board => board.Volume.CubicMetres) / LogVolume.CubicMetres);

    /// <summary>Nominal board feet, as volume, over the log's volume: what is sold out of what was bought.</summary>
    public Share Recovery => Share.FromFraction(Footage.NominalVolume.CubicMetres / LogVolume.CubicMetres);
}

/// <summary>A board of a plan.</summary>
/// <param name="Number">1 is the first to come free.</param>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Green">Thickness off the saw.</param>
/// <param name="Width">Edged width.</param>
/// <param name="Length">Trimmed length.</param>
/// <param name="Grain">How the rings stand.</param>
/// <param name="Grade">The price row taken.</param>
/// <param name="Footage">Width x length x nominal thickness.</param>
/// <param name="ValueMoney">Footage at the row's price.</param>
/// <param name="Place">Where it lies in the log.</param>
public sealed record PlannedBoard(
    int Number, NominalThickness Thickness, Length Green, Length Width, Length Length, BoardGrain Grain, string Grade, BoardFeet Footage, double ValueMoney, BoardPlace Place)
{
    /// <summary>Edged, or a slab with its natural edges: the width is then the mean of both faces at five places, the length the log's.</summary>
    public BoardEdge Edge { get; init; }

    /// <summary>Share of the thickness that may be missing along the edges of one face.</summary>
    public Share Wane { get; init; }

    /// <summary>The order line that pays; null where the list does.</summary>
    public string? Order { get; init; }

    /// <summary>The board's outline in the log as it lies for the first cut, millimetres from the line through the log: a board that lies flat after further quarter turns stands upright there.</summary>
    /// <param name="rotation">First turn of the log.</param>
    public (double LeftMm, double BottomMm, double WidthMm, double HeightMm) InFirstLie(Angle rotation)
    {
        var (width, height) = (Width.Millimetres, Green.Millimetres);
        var quarters = (((int)Math.Round((Place.TurnDegrees - rotation.Degrees) / 90.0) % 4) + 4) % 4;
        return quarters switch
        {
            0 => (Place.LeftMm, Place.BottomMm, width, height),
            1 => (-Place.BottomMm - height, Place.LeftMm, height, width),
            2 => (-Place.LeftMm - width, -Place.BottomMm - height, width, height),
            _ => (Place.BottomMm, -Place.LeftMm - width, height, width),
        };
    }

    /// <summary>Solid volume as sawn.</summary>
    public Volume Volume => Volume.FromCubicMetres(Green.Metres * Width.Metres * Length.Metres);
}

/// <summary>Where a board lies: in the log turned by an angle, its lower left corner from the straight line through the log, and its end nearest the small end.</summary>
/// <param name="TurnDegrees">Clockwise from the unturned log; the board lies flat then.</param>
/// <param name="LeftMm">Left edge, millimetres right of the line.</param>
/// <param name="BottomMm">Lower face, millimetres above the line.</param>
/// <param name="FromMm">End nearest the small end, millimetres from it.</param>
public readonly record struct BoardPlace(double TurnDegrees, double LeftMm, double BottomMm, double FromMm);

/// <summary>One way of lying on the bed, with its cuts from the top down.</summary>
/// <param name="Part">What lies there: the log, the cant, an outer part.</param>
/// <param name="Turn">Clockwise from the unturned log, looking at the small end; 0 to 360 degrees.</param>
/// <param name="BedMm">Height of the bed against the straight line through the log, millimetres, mostly negative.</param>
/// <param name="Cuts">From the top down.</param>
public sealed record PlanOpening(string Part, Angle Turn, double BedMm, IReadOnlyList<PlanCut> Cuts);

/// <summary>One pass of the blade, level over the whole length.</summary>
/// <param name="Height">Lower edge of the kerf above the bed: the thickness of what stays below.</param>
/// <param name="Frees">Numbers of the boards that are free after this cut.</param>
public sealed record PlanCut(Length Height, IReadOnlyList<int> Frees);
