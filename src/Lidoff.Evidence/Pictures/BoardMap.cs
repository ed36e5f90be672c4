using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>
/// Ties a picture of one side to its board, in millimetres. A front picture's map must not mirror, a back picture's must:
/// both sides then speak of one board point for a through hole.
/// </summary>
public sealed class BoardMap
{
    /// <summary>Name of the board's frame in millimetres, seen from the front.</summary>
    public const string Frame = "board";

    private readonly PictureTransform toBoard;
    private readonly PictureTransform toPicture;

    /// <summary>From a map that ends in <see cref="Frame"/>.</summary>
    public BoardMap(BoardSide side, PictureTransform toBoard)
    {
        Guard.That(toBoard.To == Frame, "a map that ends in frame 'board'");
        Side = side;
        this.toBoard = toBoard;
        toPicture = toBoard.Inverse();
    }

    /// <summary>Which side the picture shows.</summary>
    public BoardSide Side { get; }

    /// <summary>Where on the board a picture's point lies.</summary>
    public BoardPoint ToBoard(PicturePoint point)
    {
        var to = toBoard.Map(point);
        return new(to.X, to.Y);
    }

    /// <summary>Where in the picture a board point shows.</summary>
    public PicturePoint ToPicture(BoardPoint point) => toPicture.Map(new(point.X, point.Y));

    /// <summary>The first-order spread on the board, mm², of a picture's point.</summary>
    public PictureSpread Carry(PicturePoint point, PictureSpread pixels) => toBoard.Carry(point, pixels);

    /// <summary>
    /// False when the map mirrors on a front picture or does not on a back picture: the picture was mirrored before it came
    /// here, or it shows the other side.
    /// </summary>
    public bool SideFits(PicturePoint at) => toBoard.MirrorsAt(at) == (Side == BoardSide.Back);

    /// <summary>
    /// A back seen from behind, in millimetres from its own left edge, laid into the board frame. The sides share y and mirror
    /// in x, like a book opened at its vertical edge: <paramref name="boardWidth"/> in mm.
    /// </summary>
    public static Projective FromBehind(string from, double boardWidth) => PictureMaps.Mirrored(from, Frame, Guard.Positive(boardWidth) / 2);
}
