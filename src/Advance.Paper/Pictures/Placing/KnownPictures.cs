namespace Advance.Paper.Pictures.Placing;

/// <summary>
/// The pictures of one sheet that were laid out before, by size of type and box. Attempts at a sheet often differ in nothing but the white space
/// between rows and blocks, and there is none in a picture: the search for its scale and for the places of its labels need not be made again.
/// </summary>
internal sealed class KnownPictures
{
    private readonly Dictionary<Scene, Dictionary<(int Body, int Width, int Height), SetPicture>> known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The picture as it was laid out before, or else is now.</summary>
    /// <param name="scene">What is drawn.</param>
    /// <param name="body">Size of the type.</param>
    /// <param name="width">Width of the box.</param>
    /// <param name="height">Height of the box.</param>
    /// <param name="set">Lays it out.</param>
    public SetPicture Get(Scene scene, int body, int width, int height, Func<SetPicture> set)
    {
        if (!known.TryGetValue(scene, out var sizes))
        {
            known[scene] = sizes = [];
        }

        if (!sizes.TryGetValue((body, width, height), out var picture))
        {
            sizes[(body, width, height)] = picture = set();
        }

        return picture;
    }
}
