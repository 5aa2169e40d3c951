using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A desk, stage box, processor or amplifier.</summary>
/// <param name="Device">As written.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Piece">The thing itself.</param>
public sealed record SoundDevice(Device Device, SoundRole Role, Piece Piece)
{
    /// <summary>Its name.</summary>
    public string Name => Device.Name;

    /// <summary>Its kind; null where no stock has it.</summary>
    public Kind? Kind => Piece.Kind;
}
