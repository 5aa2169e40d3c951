namespace Advance.Planning;

/// <summary>What the joint above a box carries: its rear link along its line, its front pin the rest.</summary>
/// <param name="Below">Weight of all that hangs below it, N.</param>
/// <param name="Rear">Pull of the rear link, N; negative where it pushes; null where its place is unknown.</param>
/// <param name="Front">What the front pin gives, N towards the audience and up; null where the link's place is unknown.</param>
public sealed record HangJoint(double Below, double? Rear, SidePoint? Front)
{
    /// <summary>How much the front pin carries, N; null where the link's place is unknown.</summary>
    public double? FrontForce => Front is { } front ? Math.Sqrt((front.X * front.X) + (front.Z * front.Z)) : null;
}
