using System.Text;
using ClassKit.Content.Rosters;
using ClassKit.Exercises.Cohorts;
using ClosedXML.Excel;

namespace ClassKit.Content.Tests.Rosters;

/// <summary>Class lists as schools have them. Layouts are common practice, no source, but for OneRoster's.</summary>
public sealed class SchoolRosterTests : IDisposable
{
    private static readonly Student[] Class =
    [
        new("A.Lima", "Ana Lima", "ana@example.org"),
        new("20264711", "José Ñáñez", "jose@example.org"),
    ];

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Student ID,First name,Last name,E-mail,Team\nA.Lima,Ana,Lima,ana@example.org,1\n20264711,José,Ñáñez,jose@example.org,2\n")]
    [InlineData(
        "Surname;Forename;Email address;Student No.;Group;Notes\r\nLima;Ana;ana@example.org;A.Lima;1;\r\nÑáñez;José;jose@example.org;20264711;2;late\r\n"
    )]
    [InlineData(
        "Bread class\tautumn\n\nName\tID\tMail\tRoom\nAna Lima\tA.Lima\tana@example.org\t3\nJosé Ñáñez\t20264711\tjose@example.org\t3\n"
    )]
    [InlineData(
        "Bread class, autumn\n\nSurname;Forename;Email address;Student No.;Notes\nLima;Ana;ana@example.org;A.Lima;\"left-handed; asks, often\"\nÑáñez;José;jose@example.org;20264711;\n"
    )]
    public void Extra_columns_and_lines_and_names_apart_are_no_hindrance_in_any_letters(string text)
    {
        Encoding[] kinds =
        [
            new UTF8Encoding(false),
            new UTF8Encoding(true),
            Encoding.Unicode,
            Encoding.BigEndianUnicode,
            CodePagesEncodingProvider.Instance.GetEncoding(1252)!,
        ];
        foreach (var kind in kinds)
        {
            var reading = RosterReader.Read(_folder.WriteBytes("class.csv", [.. kind.GetPreamble(), .. kind.GetBytes(text)]));

            Assert.Empty(reading.Problems);
            Assert.Equal(Class, reading.Model!.Students.Select(student => student with { Team = null }));
            Assert.Equal(kind.WindowsCodePage == 1252 && kind is not UTF8Encoding, reading.Model.Origin!.GuessedLetters);
        }
    }

    [Fact]
    public void What_was_taken_for_what_is_known()
    {
        var origin = RosterReader.Read(_folder.Write("class.csv", "Team,Surname,First,Username,No.\n1,Lima,Ana,alima,7\n")).Model!.Origin!;

        Assert.Equal(
            [
                new("Team", RosterField.Team),
                new("Surname", RosterField.LastName),
                new("First", RosterField.FirstName),
                new("Username", RosterField.Id),
            ],
            origin.Taken
        );
        Assert.Equal(["No."], origin.LeftAside);
        Assert.False(origin.IsPlain);
        Assert.True(RosterReader.Read(_folder.Write("plain.csv", "id,name,email\nana,Ana,ana@example.org\n")).Model!.Origin!.IsPlain);
    }

    /// <summary>Numbers of lines are nobody's; a school's own are longer, or stand in a column that says whose they are.</summary>
    [Theory]
    [InlineData("No,Name\n1,Ana Lima\n2,Bo Li\n", "ana-lima", "bo-li")]
    [InlineData("No.,Name\n1.,Ana Lima\n4.,Bo Li\n", "ana-lima", "bo-li")]
    [InlineData("Number,Name,E-mail\n2,Ana Lima,al@example.org\n1,Bo Li,bl@example.org\n", "al", "bl")]
    [InlineData("No,Name\n10235,Ana Lima\n10236,Bo Li\n", "10235", "10236")]
    [InlineData("id,Name\n1,Ana Lima\n2,Bo Li\n", "1", "2")]
    [InlineData("Student No,Name\n1,Ana Lima\n2,Bo Li\n", "1", "2")]
    [InlineData("Roll No,Name\n1,Ana Lima\n2,Bo Li\n", "ana-lima", "bo-li")]
    public void Numbers_that_count_the_lines_are_no_ids(string list, string first, string second)
    {
        var roster = RosterReader.Read(_folder.Write("class.csv", list)).Model!;

        Assert.Equal([first, second], roster.Students.Select(student => student.Id));
        Assert.Equal(first is "ana-lima" or "al", roster.Origin!.Counting is not null);
    }

    /// <summary>A school's own number is taken whatever it is called: names of pupils, candidates and rolls, common practice, no source.</summary>
    [Theory]
    [InlineData("Pupil No")]
    [InlineData("UPN")]
    [InlineData("ULN")]
    [InlineData("Candidate No.")]
    [InlineData("Roll No")]
    [InlineData("Reg. No.")]
    [InlineData("Matrikel-Nr.")]
    public void A_schools_own_number_is_an_id_under_any_usual_title(string title)
    {
        var roster = RosterReader.Read(_folder.Write("class.csv", $"{title},Surname,First name\n20413,Doe,Sam\n20414,Doe,Sam\n")).Model!;

        Assert.Equal(["20413", "20414"], roster.Students.Select(student => student.Id));
    }

    /// <summary>Unicode CLDR, personNames: Chinese, Japanese and Korean names are written surname first.</summary>
    [Theory]
    [InlineData("李,小龍", "李 小龍")]
    [InlineData("김,민준", "김 민준")]
    [InlineData("やまだ,はなこ", "やまだ はなこ")]
    [InlineData("Lee,小龍", "小龍 Lee")]
    [InlineData("Ñáñez,José", "José Ñáñez")]
    public void Names_in_letters_of_East_Asia_have_the_familys_first(string line, string name) =>
        Assert.Equal(name, RosterReader.Read(_folder.Write("class.csv", $"Surname,First name\n{line}\n")).Model!.Students.Single().Name);

    /// <summary>
    /// What school programs put below a list: common practice, no source. The same whether the table is text or a workbook.
    /// </summary>
    [Theory]
    [InlineData("Total students: 26", "")]
    [InlineData("", "Total students: 26")]
    [InlineData("Total", "26")]
    [InlineData("", "2 students")]
    [InlineData("Number of students", "2")]
    [InlineData("Students: 2", "")]
    [InlineData("Printed on 30/11/2026 14:05", "")]
    [InlineData("--- End of list ---", "")]
    [InlineData("", "End of report")]
    public void Lines_that_count_students_or_end_the_list_are_nobodys_and_are_told_of(string first, string second)
    {
        using var workbook = new XLWorkbook();
        string[][] lines =
        [
            ["No.", "Name", "E-mail"],
            ["1", "Ana Lima", "ana@example.org"],
            ["2", "Bo Li", "bo@example.org"],
            [first, second, ""],
            ["", "Total", "2"],
        ];
        var sheet = workbook.AddWorksheet();
        foreach (var (row, line) in lines.Index())
        foreach (var (column, cell) in line.Index())
            sheet.Cell(row + 1, column + 1).Value = cell;
        using var bytes = new MemoryStream();
        workbook.SaveAs(bytes);
        foreach (
            var reading in new[]
            {
                RosterReader.Read(_folder.WriteBytes("class.xlsx", bytes.ToArray())),
                RosterReader.Read(_folder.Write("class.csv", string.Concat(lines.Select(line => string.Join(',', line) + "\n")))),
            }
        )
        {
            Assert.Empty(reading.Problems);
            Assert.Equal(["Ana Lima", "Bo Li"], reading.Model!.Students.Select(student => student.Name));
            Assert.Equal([$"{first} {second}".Trim(), "Total 2"], reading.Model.Origin!.Below);
        }
    }

    /// <summary>A word that only looks like one of those, or one that stands among students, is somebody's name.</summary>
    [Fact]
    public void Whoever_is_called_like_a_count_is_a_student()
    {
        Assert.Equal(
            ["Total Eclipse", "Sum", "Count Orlok", "Ana"],
            RosterReader
                .Read(_folder.Write("a.csv", "name\nTotal Eclipse\nSum\nCount Orlok\nAna\n"))
                .Model!.Students.Select(student => student.Name)
        );
        Assert.Equal(
            ["Ana", "Sum", "Mae Total"],
            RosterReader.Read(_folder.Write("b.csv", "name\nAna\nSum\nMae Total\n")).Model!.Students.Select(student => student.Name)
        );
        var nameless = Assert.Single(RosterReader.Read(_folder.Write("c.csv", "name,mail\nAna,a@example.org\n,b@example.org\n")).Problems);
        Assert.Equal((3, "The line names nobody: it holds `b@example.org`"), (nameless.Line, nameless.Found));
    }

    [Fact]
    public void Ids_that_a_school_does_not_give_are_made_of_addresses_and_else_of_names()
    {
        var byAddress = RosterReader.Read(_folder.Write("mail.csv", "Name,E-mail\nAna Lima,Ana.Lima@example.org\n")).Model!;
        var byName = RosterReader.Read(_folder.Write("names.csv", "Name\nBảo Nguyễn\n")).Model!;

        Assert.Equal(("ana-lima", RosterIds.Email), (byAddress.Students[0].Id, byAddress.Origin!.Ids));
        Assert.Equal(("bao-nguyen", RosterIds.Name), (byName.Students[0].Id, byName.Origin!.Ids));
    }

    /// <summary>What was dealt and graded in September goes by the ids of September.</summary>
    [Fact]
    public void A_newcomer_without_an_address_turns_nobody_elses_id()
    {
        const string september = "name,email\nAmara Osei,a.osei@example.org\nBen Okoro,b.okoro@example.org\n";
        var before = RosterReader.Read(_folder.Write("september.csv", september)).Model!;
        var reading = RosterReader.Read(_folder.Write("november.csv", september + "Cleo Marsh,\n"));

        Assert.Equal(
            [.. before.Students.Select(student => student.Id), "cleo-marsh"],
            reading.Model!.Students.Select(student => student.Id)
        );
        Complaint.One(Assert.Single(reading.Doubts), 4, "`Cleo Marsh` has no e-mail address", "before anything is dealt");
    }

    [Fact]
    public void A_workbook_is_read_with_numbers_as_they_show_from_the_sheet_that_holds_names()
    {
        using var workbook = new XLWorkbook();
        workbook.AddWorksheet("About").Cell(1, 1).Value = "Printed on Monday";
        var list = workbook.AddWorksheet("Class 3b");
        list.Cell(1, 1).Value = "Class 3b, room 12";
        list.Cell(3, 2).InsertData(new object[][] { ["Number", "Name", "Group"], [20264711, "José Ñáñez", 2], [20264712, "Gone Away", 2] });
        list.Row(5).Hide();
        var file = Path.Combine(_folder.Path, "class.xlsx");
        workbook.SaveAs(file);

        var roster = RosterReader.Read(file).Model!;

        Assert.Equal([new("20264711", "José Ñáñez") { Team = "2" }], roster.Students);
        Assert.Equal(("Class 3b", 1), (roster.Origin!.Sheet, roster.Origin.HiddenRows));
    }

    [Theory]
    [InlineData("Nom;Prénom;Courriel;Groupe", "Šimić;Ana;ana@example.org;2", "Ana Šimić")]
    [InlineData("Name;Vorname;E-Mail-Adresse;Gruppe", "Šimić;Ana;ana@example.org;2", "Ana Šimić")]
    [InlineData("Apellidos;Nombre;Correo;Grupo", "Šimić;Ana;ana@example.org;2", "Ana Šimić")]
    [InlineData("Nombre;Correo electrónico;Equipo", "Ana Šimić;ana@example.org;2", "Ana Šimić")]
    [InlineData("Cognome;Nome;Email;Gruppo", "Šimić;Ana;ana@example.org;2", "Ana Šimić")]
    [InlineData("Achternaam;Voornaam;E-mailadres;Groep", "Šimić;Ana;ana@example.org;2", "Ana Šimić")]
    public void Titles_in_a_schools_own_language_are_read(string titles, string line, string name)
    {
        var student = RosterReader.Read(_folder.Write("class.csv", $"Export du 28/11/2026\n{titles}\n{line}\n")).Model!.Students.Single();

        Assert.Equal((name, "ana@example.org", "2"), (student.Name, student.Email, student.Team));
    }

    [Fact]
    public void Where_no_line_names_students_the_fullest_is_taken_for_the_titles() =>
        Complaint.Only(
            RosterReader.Read(_folder.Write("class.csv", "Class list of spring\n\nElevnavn;Hold;Rum\nAna;2;B1\n")),
            3,
            "there are `Elevnavn`, `Hold`, `Rum`",
            "Call one column `name`"
        );

    [Fact]
    public void A_workbook_that_cannot_be_read_says_why() =>
        Complaint.Only(
            RosterReader.Read(_folder.WriteBytes("class.xlsx", [0x50, 0x4B, 3, 4, 0, 0])),
            null,
            "The workbook cannot be read",
            "save the list as CSV"
        );

    private const string Users =
        "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email\n"
        + "u1,active,,true,alima,,Ana,Lima,,,ana@example.org\nu2,active,,true,jnanez,,José,Ñáñez,,,\nu3,active,,true,teach,,Tea,Cher,,,\nu4,tobedeleted,,true,gone,,Gone,Away,,,\n";

    /// <summary>
    /// 1EdTech OneRoster 1.2, CSV binding: users.csv has no roles, enrollments.csv has a line for each person in each class.
    /// </summary>
    [Fact]
    public void The_tables_of_OneRoster_are_read_from_either()
    {
        _folder.Write("users.csv", Users);
        _folder.Write(
            "enrollments.csv",
            "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role\ne1,active,,c1,s,u1,student\ne2,active,,c1,s,u2,student\ne3,active,,c1,s,u3,teacher\ne4,active,,c1,s,u4,student\n"
        );
        foreach (var named in (string[])["users.csv", "enrollments.csv"])
        {
            var roster = RosterReader.Read(Path.Combine(_folder.Path, named)).Model!;

            Assert.Equal([new("u1", "Ana Lima", "ana@example.org"), new("u2", "José Ñáñez")], roster.Students);
            Assert.Equal(2, roster.Origin!.Others);
        }
    }

    [Fact]
    public void Enrolments_in_several_classes_ask_for_one()
    {
        var users = _folder.Write("users.csv", Users);
        _folder.Write("enrollments.csv", "sourcedId,classSourcedId,userSourcedId,role\ne1,c1,u1,student\ne2,c2,u2,student\n");

        Complaint.Only(RosterReader.Read(users), null, "enrollments.csv holds 2 classes: `c1`, `c2`", "the lines of one class alone");
    }

    /// <summary>A table of enrolments that is cut off, or lacks its columns, must not make a class of the whole school.</summary>
    [Theory]
    [InlineData("sourcedId,classSourcedId,userSourcedId,role\ne1,c1,u1,student\ne2,c1,\"u2,stud")]
    [InlineData("sourcedId,userSourcedId,role\ne1,u1,student\n")]
    [InlineData("")]
    public void Enrolments_that_cannot_be_read_make_no_class_of_all_users(string table)
    {
        var users = _folder.Write("users.csv", Users);
        _folder.Write("enrollments.csv", table);

        Complaint.Only(RosterReader.Read(users), null, "enrollments.csv lies beside it and cannot be read", "Export enrollments.csv again");
    }
}
