using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Rendering;

/// <summary>A pinhole camera over a board: where board points show, and which point of a level is seen at a pixel.</summary>
internal sealed class SceneCamera
{
    private readonly Scene scene;
    private readonly double sinTilt;
    private readonly double cosTilt;
    private readonly double sinTurn;
    private readonly double cosTurn;
    private readonly double focal;
    private readonly double middleX;
    private readonly double middleY;

    public SceneCamera(Scene scene)
    {
        this.scene = scene;
        (sinTilt, cosTilt) = (Elementary.Sin(scene.TiltDegrees * Math.PI / 180), Elementary.Cos(scene.TiltDegrees * Math.PI / 180));
        (sinTurn, cosTurn) = (Elementary.Sin(scene.TurnDegrees * Math.PI / 180), Elementary.Cos(scene.TurnDegrees * Math.PI / 180));
        focal = scene.PxPerMm * scene.CameraDistanceMm;
        (middleX, middleY) = scene.LookAt ?? (scene.BoardWidthMm / 2, scene.BoardHeightMm / 2);
    }

    /// <summary>Where the board point (x, y), <paramref name="height"/> mm above the board, shows.</summary>
    public PicturePoint Show(double x, double y, double height)
    {
        var (u, v) = (x - middleX, y - middleY);
        (u, v) = ((u * cosTurn) - (v * sinTurn), (u * sinTurn) + (v * cosTurn));
        var across = (v * cosTilt) - (height * sinTilt);
        var depth = scene.CameraDistanceMm - (v * sinTilt) - (height * cosTilt);
        return new((scene.Width / 2.0) + (focal * u / depth), (scene.Height / 2.0) + (focal * across / depth));
    }

    /// <summary>Which point at <paramref name="height"/> above the board is seen at a place of the picture.</summary>
    public (double X, double Y) See(double px, double py, double height)
    {
        var (a, b) = ((px - (scene.Width / 2.0)) / focal, (py - (scene.Height / 2.0)) / focal);
        // across = b·depth and depth = Z − v·sin − h·cos give v; then u = a·depth.
        var v = ((b * (scene.CameraDistanceMm - (height * cosTilt))) + (height * sinTilt)) / (cosTilt + (b * sinTilt));
        var u = a * (scene.CameraDistanceMm - (v * sinTilt) - (height * cosTilt));
        return ((u * cosTurn) + (v * sinTurn) + middleX, (v * cosTurn) - (u * sinTurn) + middleY);
    }
}
