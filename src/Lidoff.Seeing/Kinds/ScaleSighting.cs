using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A known length in a picture: which picture (file name, entry id or the start of the file's hash), its ends, its length with standard
/// uncertainty, its height above the board (mm), and the camera's distance (mm) when it was measured. <paramref name="CarriedFrom"/> is the
/// picture of the same camera and zoom that its length was carried over from; empty where it was known in this picture itself. <paramref name="Package"/>
/// is the spot whose recognised package it is; empty for a length known otherwise. What is measured by it is then no evidence of that package.
/// </summary>
public sealed record ScaleSighting(string Picture, ReferenceLength Reference, double? CameraDistanceMm, string CarriedFrom = "", string Package = "");
