using Advance.Domain.Facts;

namespace Advance.Domain.Companies;

/// <summary>Somebody to ring.</summary>
/// <param name="Name">Person or office.</param>
/// <param name="Role">What they are for.</param>
/// <param name="Phone">As dialled; null where there is none.</param>
/// <param name="Private">Whether the number stays off other people's copies.</param>
/// <param name="At">Where it was written.</param>
public sealed record Contact(string Name, string Role, Given<string> Phone, bool Private, Mark At);
