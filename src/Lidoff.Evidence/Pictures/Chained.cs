namespace Lidoff.Evidence.Pictures;

/// <summary>Two maps of different sorts, one after the other.</summary>
internal sealed class Chained(PictureTransform first, PictureTransform second) : PictureTransform(first.From, second.To)
{
    public override PicturePoint Map(PicturePoint point) => second.Map(first.Map(point));

    public override Jacobian JacobianAt(PicturePoint point) => first.JacobianAt(point).Then(second.JacobianAt(first.Map(point)));

    public override PictureTransform Inverse() => new Chained(second.Inverse(), first.Inverse());
}
