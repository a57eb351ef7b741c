namespace Boardwright.Web.Drawings;

/// <summary>Both faces of a board with its defects and the cuttings that grade it. Lengths in inches, from the left end and the lower edge.</summary>
/// <param name="Name">What the board is.</param>
/// <param name="Species">Common name.</param>
/// <param name="LengthInches">Length.</param>
/// <param name="WidthInches">Width.</param>
/// <param name="Faces">The faces, in the order they are drawn.</param>
public sealed record BoardFacesDrawing(string Name, string Species, double LengthInches, double WidthInches, IReadOnlyList<FaceDrawing> Faces);

/// <summary>One face.</summary>
/// <param name="Words">Its heading, such as "face a, the poor face".</param>
public sealed record FaceDrawing(string Words, IReadOnlyList<FacePiece> Defects, IReadOnlyList<FacePiece> Cuttings);

/// <summary>A rectangle on a face.</summary>
/// <param name="Label">What stands in it.</param>
/// <param name="Round">Drawn as an oval: knots and holes.</param>
public sealed record FacePiece(string Label, double FromLeft, double FromEdge, double Along, double Across, bool Round = false);
