using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Reading.Files;

/// <summary>What can be wrong with a file as a whole, in words.</summary>
internal static class FileFindings
{
    public static Finding Utf16(string file) =>
        Fault("reading/encoding", Top(file), $"{file} is saved as UTF-16, which is not read", "Save it as UTF-8.");

    public static Finding Binary(string file) =>
        Fault("reading/not-text", Top(file), $"{file} is not a text file", "Name a file that a text editor can open, in YAML or CSV.");

    public static Finding Nul(Mark at) =>
        Fault("reading/not-text", at, "A NUL character stands here, which no text has", "Delete it, or save the file again from the program that made it.");

    public static Finding NotUtf8(Mark at, byte bad) =>
        Fault("reading/encoding", at, $"This character is not UTF-8: its byte is {bad.ToString("X2")}", "Type the character again and save the file as UTF-8.");

    public static Finding Unseen(Mark at, char unseen) =>
        Fault("reading/unseen-character", at, $"An unseen character stands here: U+{((int)unseen).ToString("X4")}", "Delete it; where it came with a paste, type the line again.");

    public static Finding Empty(string file) =>
        Fault("reading/empty", Top(file), $"{file} is empty", "Write at least the keys that must be there, or take its name out.");

    public static Finding NotRead(Mark at, string file, FileFault why, int limit) => why switch
    {
        FileFault.Missing => Fault("reading/no-such-file", at, $"There is no file {file}", "Check the spelling; the path starts from the file that names it."),
        FileFault.Folder => Fault("reading/no-such-file", at, $"{file} is a folder, and a file is needed", "Name the file in it."),
        FileFault.TooLarge => Fault("reading/too-large", at, $"{file} is larger than {limit / 1_000_000} MB, which no gig needs", "Check that this is the file that was meant."),
        FileFault.Outside => Outside(at, file),
        _ => Fault("reading/unreadable", at, $"{file} cannot be read: the system refuses", "Check who may read it."),
    };

    public static Finding Outside(Mark at, string file) =>
        Fault("reading/outside", at, $"{file} does not stay inside the folder that holds the gig", "Copy the file into the folder and name it by a path from here, with / between the folders.");

    public static Finding Cycle(Mark at, string file) =>
        Fault("reading/cycle", at, $"{file} is being read already: it leads back to itself", "Take one of the references out.");

    public static Finding NotAnIssue(Mark at) =>
        Fault("reading/not-an-issue", at, $"{at.File} does not hold an issue", "Put back the file as it was issued; or move it away, and the next plan starts afresh.");

    public static Mark Top(string file) => new(file, 1, 1);

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new(rule, Severity.Error, at, says, cure);
}
