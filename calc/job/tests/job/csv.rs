//! The price list as a file: out and in again, tried before anything changes, and read by Python's own csv module.

use std::process::{Command, Stdio};

use bedwright_job::entry::Unit;
use bedwright_job::id::Id;
use bedwright_job::prices::csv::{
    Column, DryRun, FileFault, FileForm, LONGEST_CELL, MOST_BYTES, NAMES, RowFault, Separator, Stray, dry_run, list_csv,
};
use bedwright_job::prices::{
    AmountFault, Care, ListEdit, MOST_ROWS, Origin, PriceField, PriceKind, PriceList, PriceRow, amount, amount_text,
    apply,
};
use proptest::prelude::*;

use crate::{cases, jobs};

const PLAIN: FileForm = FileForm { separator: Separator::Comma, decimal: '.', mark: false };

/// Every way a file can be written.
fn forms() -> impl Iterator<Item = FileForm> {
    Separator::ALL.into_iter().flat_map(|separator| {
        ['.', ','].into_iter().flat_map(move |decimal| [false, true].map(|mark| FileForm { separator, decimal, mark }))
    })
}

fn put(list: &mut PriceList, row: PriceRow) {
    apply(list, ListEdit::row(row), &Id::new("desk")).unwrap();
}

/// A row with a part number and a price.
fn row(key: &str, part_number: &str, price: &str) -> PriceRow {
    PriceRow {
        part_number: part_number.to_owned(),
        price: amount(price, '.').unwrap(),
        ..PriceRow::new(key, PriceKind::Part)
    }
}

/// A list with every kind of text a cell can be wrong about.
fn hostile() -> PriceList {
    let mut list = PriceList::shipped();
    let texts = [
        "00123",
        "=1+1",
        "+1",
        "-1",
        "@x",
        "\tx",
        "'x",
        "''=x",
        "'",
        "a,b",
        "a;b",
        "say \"x\"",
        "two\r\nlines",
        " x ",
        "ä “x” \u{1F6B0}",
        "−1",
        "＝1",
        "1,5",
        "1.234",
        "TRUE",
        "1e5",
        "2026-11-26",
        "\"",
        "\r",
        "x'=y",
    ];
    for (place, text) in texts.iter().enumerate() {
        let mut own = row(&format!("own:{place}"), "", "1234.5");
        own.part_number = format!("{text}{place}");
        for &field in PriceField::ALL.iter().filter(|field| **field != PriceField::PartNumber) {
            (*text).clone_into(own.text_mut(field));
        }
        own.cost = (place % 2 == 0).then(|| amount("0.000001", '.').unwrap().unwrap());
        own.size =
            [None, Some(jobs::entry("10", Unit::Foot)), Some(jobs::entry("1.5 cu ft", Unit::Litre))][place % 3].clone();
        own.set_care(Care::ALL[place % Care::ALL.len()], true);
        own.set_care(Care::TakesOxygen, true);
        own.retired = place % 5 == 0;
        put(&mut list, own);
    }
    list
}

fn tried(list: &PriceList, text: &str) -> DryRun {
    dry_run(list, text.as_bytes(), None).unwrap()
}

/// The reasons rows of a file are refused, by line.
fn refused(list: &PriceList, text: &str) -> Vec<(usize, RowFault)> {
    tried(list, text).refused.into_iter().map(|refusal| (refusal.line, refusal.why)).collect()
}

#[test]
fn the_names_of_the_columns_are_permanent() {
    let header = list_csv(&PriceList::shipped(), PLAIN).lines().next().unwrap().to_owned();
    let names = "key,kind,part_number,name,bin,unit,cost,price,tax_class,size,superseded_by,care,retired,origin";
    assert_eq!(header, names);
}

#[test]
fn a_file_written_from_a_list_changes_nothing_of_it_in_any_form() {
    let list = hostile();
    for form in forms() {
        let again = tried(&list, &list_csv(&list, form));
        assert_eq!((again.added.len(), again.changed.len(), &again.refused), (0, 0, &Vec::new()), "{form:?}");
        assert_eq!(again.unchanged, list.rows().len());
        assert_eq!((again.separator, again.decimal), (form.separator, Some(form.decimal)));
    }
}

#[test]
fn a_file_makes_the_same_list_of_a_shipped_one() {
    let list = hostile();
    for form in forms() {
        let mut other = PriceList::shipped();
        let again = tried(&other, &list_csv(&list, form));
        assert_eq!(again.refused, [], "{form:?}");
        apply(&mut other, again.edit(), &Id::new("other")).unwrap();
        assert_eq!(other.rows().len(), list.rows().len());
        for (was, is) in list.rows().iter().zip(other.rows()) {
            let si = |row: &PriceRow| row.size.as_ref().map(|size| size.understood().unwrap().si);
            assert_eq!(si(was), si(is));
            assert_eq!(PriceRow { size: None, ..(**was).clone() }, PriceRow { size: None, ..(**is).clone() });
        }
    }
}

/// By Python's csv module: every cell it reads is the cell that was written, and none looks like a formula.
#[test]
fn python_reads_every_cell_as_it_was_written() {
    let list = hostile();
    for form in forms() {
        let program = "import csv, json, sys\n\
            text = sys.stdin.buffer.read().decode('utf-8-sig')\n\
            import io\n\
            rows = list(csv.DictReader(io.StringIO(text, newline=''), delimiter=sys.argv[1], strict=True))\n\
            json.dump(rows, sys.stdout)";
        let mut python = Command::new("python3")
            .args(["-c", program, &form.separator.mark().to_string()])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        std::io::Write::write_all(&mut python.stdin.take().unwrap(), list_csv(&list, form).as_bytes()).unwrap();
        let output = python.wait_with_output().unwrap();
        assert!(output.status.success());
        let rows: Vec<serde_json::Map<String, serde_json::Value>> = serde_json::from_slice(&output.stdout).unwrap();
        assert_eq!(rows.len(), list.rows().len());
        for (was, is) in list.rows().iter().zip(&rows) {
            let cell = |name: &str| is[name].as_str().unwrap();
            for &field in PriceField::ALL {
                let text = was.text(field);
                let read = cell(field.id());
                assert_eq!(read.strip_prefix('\'').filter(|_| read.len() > text.len()).unwrap_or(read), text);
                assert!(!read.starts_with(['=', '+', '-', '@', '\t', '\r']), "{read}");
            }
            let money = |money| Option::map(money, |money| amount_text(money, form.decimal)).unwrap_or_default();
            assert_eq!((cell("cost"), cell("price")), (money(was.cost).as_str(), money(was.price).as_str()));
            assert_eq!((cell("key"), cell("kind")), (was.key.as_str(), was.kind.id()));
            assert_eq!(cell("care"), was.care.iter().map(|care| care.id()).collect::<Vec<_>>().join(" "));
        }
    }
}

/// The cells of a spreadsheet as Gnumeric writes them into its own XML: row, column, whether it is a text, what it holds.
fn spreadsheet(csv: &str, folder: &std::path::Path) -> Vec<(usize, usize, bool, String)> {
    let (from, to) = (folder.join("list.csv"), folder.join("list.xml"));
    std::fs::write(&from, csv).unwrap();
    let done = Command::new("ssconvert")
        .args(["-T", "Gnumeric_XmlIO:sax:0"])
        .args([&from, &to])
        .stderr(Stdio::null())
        .stdout(Stdio::null())
        .status();
    assert!(done.expect("ssconvert is there (Debian: gnumeric)").success());
    let xml = std::fs::read_to_string(&to).unwrap();
    let plain = |text: &str| {
        let marks = [
            ("&lt;", "<"),
            ("&gt;", ">"),
            ("&quot;", "\""),
            ("&apos;", "'"),
            ("&#xD;", "\r"),
            ("&#13;", "\r"),
            ("&#x9;", "\t"),
            ("&amp;", "&"),
        ];
        marks.iter().fold(text.to_owned(), |text, (mark, is)| text.replace(mark, is))
    };
    let cell = |text: &str| {
        let (head, rest) = text.split_once('>')?;
        let said = |name: &str| Some(head.split_once(&format!(" {name}=\""))?.1.split('"').next()?.to_owned());
        let text = rest.split_once("</gnm:Cell>").map_or("", |(text, _)| text);
        Some((
            said("Row")?.parse().ok()?,
            said("Col")?.parse().ok()?,
            said("ValueType").as_deref() == Some("60"),
            plain(text),
        ))
    };
    xml.split("<gnm:Cell").skip(1).filter_map(cell).collect()
}

/// By Gnumeric: nothing is taken for a formula, texts are the texts that were written, amounts the amounts. What looks
/// like a number to it becomes one, leading noughts lost, as the README says.
#[test]
#[ignore = "needs ssconvert of Gnumeric: tests/run spreadsheet"]
fn a_spreadsheet_reads_every_cell_as_it_was_written() {
    let list = hostile();
    let folder = std::env::temp_dir().join(format!("bedwright-sheet-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let cells = spreadsheet(&list_csv(&list, PLAIN), &folder);
    std::fs::remove_dir_all(&folder).unwrap();
    let at = |row: usize, column: usize| cells.iter().find(|(r, c, ..)| (*r, *c) == (row, column));
    let (mut texts, mut amounts) = (0, 0);
    for (place, was) in list.rows().iter().enumerate() {
        let row = place + 1;
        for (column, (_, of)) in NAMES.iter().enumerate() {
            match of {
                Column::Text(field) => {
                    let text = was.text(*field);
                    let Some((_, _, is_text, read)) = at(row, column) else {
                        assert!(text.is_empty(), "{text:?}");
                        continue;
                    };
                    if *is_text {
                        // It ends every line in the same way.
                        assert_eq!(
                            read.replace("\r\n", "\n").replace('\r', "\n"),
                            text.replace("\r\n", "\n").replace('\r', "\n")
                        );
                        texts += 1;
                    } else {
                        assert!(!read.starts_with('='), "taken for a formula: {read:?} of {text:?}");
                        let looks = text.trim_start_matches('0').starts_with(|c: char| c.is_ascii_digit() || c == '-')
                            || text == "TRUE";
                        assert!(looks, "{text:?} became {read:?}");
                    }
                }
                Column::Cost | Column::Price => {
                    let money = if matches!(of, Column::Cost) { was.cost } else { was.price };
                    let read = at(row, column).map(|(.., read)| read.parse::<f64>().unwrap());
                    assert_eq!(read, money.map(|money| amount_text(money, '.').parse::<f64>().unwrap()));
                    amounts += usize::from(read.is_some());
                }
                _ => {}
            }
        }
    }
    println!("{texts} texts and {amounts} amounts read by Gnumeric as they were written");
    assert!(texts > 100 && amounts > 30);
}

#[test]
fn only_what_differs_is_told() {
    let mut list = PriceList::shipped();
    put(&mut list, PriceRow { bin: "A-1".to_owned(), ..row("own:a", "U-100", "1") });
    let file = "Part Number;PRICE;Bin\nu-100;1,50;A-1\nU-200;;B-2\nu-300;\"2,00\";\"B-3\"\n";
    let run = tried(&list, file);
    assert_eq!((run.separator, run.decimal), (Separator::Semicolon, Some(',')));
    let [changed] = run.changed.as_slice() else { panic!("{:?}", run.changed) };
    assert_eq!(changed.columns, [Column::Text(PriceField::PartNumber), Column::Price]);
    assert_eq!(changed.after.price, amount("1.50", '.').unwrap());
    assert_eq!(run.added.iter().map(|row| row.key.as_str()).collect::<Vec<_>>(), ["own:u-200", "own:u-300"]);
    assert_eq!(run.added[0].price, None, "a blank price is a gap, never nought");
    let mut after = list.clone();
    let undo = apply(&mut after, run.edit(), &Id::new("desk")).unwrap();
    assert_eq!(after.row("own:u-200").unwrap().bin, "B-2");
    assert_eq!(tried(&after, file).unchanged, 3, "the same file again changes nothing");
    apply(&mut after, undo, &Id::new("desk")).unwrap();
    assert_eq!(after.rows(), list.rows());
}

#[test]
fn a_shipped_row_that_gets_a_price_is_the_persons_own() {
    let run = tried(&PriceList::shipped(), "key,price\npart:riser_cap,4\nlabour:travel,\nlabour:new,80\n");
    assert_eq!((run.changed.len(), run.unchanged, run.added.len()), (1, 1, 1));
    assert_eq!(run.changed[0].after.origin, Origin::Own);
    assert_eq!(run.added[0].kind, PriceKind::Labour);
}

#[test]
fn a_column_that_is_absent_leaves_what_is_there_and_a_blank_cell_takes_it_away() {
    let mut list = PriceList::shipped();
    put(&mut list, PriceRow { bin: "A-1".to_owned(), cost: amount("1", '.').unwrap(), ..row("own:a", "U", "2") });
    let after = tried(&list, "key,price,whatever\nown:a,,7\n");
    assert_eq!(after.ignored, ["whatever"]);
    let row = &after.changed[0].after;
    assert_eq!((row.price, row.cost, row.bin.as_str()), (None, amount("1", '.').unwrap(), "A-1"));
}

#[test]
fn each_wrong_row_is_refused_with_its_reason_and_the_others_are_taken() {
    let mut list = PriceList::shipped();
    put(&mut list, row("own:a", "TAKEN", "1"));
    put(&mut list, row("own:b", "TWICE", "1"));
    put(&mut list, row("own:c", "TWICE", "1"));
    let header = "key,part_number,kind,name,cost,price,size,care,retired\n";
    let wrong_amount = |text: &str, fault| RowFault::Amount { column: Column::Price, text: text.to_owned(), fault };
    let not_one = |column, text: &str| RowFault::NotOneOf { column, text: text.to_owned() };
    let cases = [
        (",U,part,x,1.5", RowFault::Cells { found: 5, wanted: 9 }),
        (",U,part,x,1.5,2,,,,more", RowFault::Cells { found: 10, wanted: 9 }),
        (",,part,nameless,1.5,2,,,", RowFault::NoName),
        (",U,part,2\" pipe,1.5,2,,,", RowFault::Stray(Stray::Inside)),
        (",U,part,\"x\"y,1.5,2,,,", RowFault::Stray(Stray::After)),
        (",U,part,\"x,1.5,2,,,", RowFault::Stray(Stray::NeverClosed)),
        (",U,part,x,1.5,1e30,,,", wrong_amount("1e30", AmountFault::NotAnAmount)),
        (
            ",U,part,x,1.5,1000000000000000000000000000000,,,",
            wrong_amount("1000000000000000000000000000000", AmountFault::TooLarge),
        ),
        (",U,part,x,1.5,-2,,,", wrong_amount("-2", AmountFault::Negative)),
        (",U,part,x,1.5,2.0000001,,,", wrong_amount("2.0000001", AmountFault::TooFine)),
        (",U,part,x,1.5,=2+2,,,", wrong_amount("=2+2", AmountFault::NotAnAmount)),
        (",U,part,x,1.5,$2,,,", wrong_amount("$2", AmountFault::NotAnAmount)),
        (",U,part,x,1.5,\"2,50\",,,", RowFault::MixedMarks { text: "2,50".to_owned(), decimal: '.', line: 2 }),
        (",U,part,x,1.5,\"2,500\",,,", RowFault::MixedMarks { text: "2,500".to_owned(), decimal: '.', line: 2 }),
        (",U,boat,x,1.5,2,,,", not_one(Column::Kind, "boat")),
        (",U,part,x,1.5,2,,keep_warm,", not_one(Column::Care, "keep_warm")),
        (",U,part,x,1.5,2,,,perhaps", not_one(Column::Retired, "perhaps")),
        (",U,pack,x,1.5,2,0 cu ft,,", RowFault::NoSize { text: "0 cu ft".to_owned() }),
        (",U,pack,x,1.5,2,10,,", RowFault::Size { text: "10".to_owned() }),
        (",U,pack,x,1.5,2,10 psi,,", RowFault::Size { text: "10 psi".to_owned() }),
        (",taken,part,x,1.5,2,,,\nown:z,Taken,part,x,1.5,2,,,", RowFault::SamePartNumber { line: 3 }),
        ("own:z,Taken,part,x,1.5,2,,,", RowFault::PartNumberTaken { key: "own:a".to_owned() }),
        (",twice,part,x,1.5,2,,,", RowFault::WhichRow { rows: 2 }),
        (",ok,part,x,1.5,2,,,", RowFault::SamePartNumber { line: 2 }),
        ("own:ok,V,part,x,1.5,2,,,", RowFault::SameKey { line: 2 }),
    ];
    for (line, why) in cases {
        let file = format!("{header},OK,part,x,1.5,2,,,\n{line}\n,LAST,part,x,1.5,2,,,\n");
        let run = tried(&list, &file);
        let added = run.added.iter().filter(|row| row.part_number == "OK" || row.part_number == "LAST").count();
        assert_eq!(added, 2, "{line}");
        assert_eq!(run.refused.iter().map(|refusal| &refusal.why).collect::<Vec<_>>(), [&why], "{line}");
    }
    let long = "x".repeat(121);
    assert_eq!(
        refused(&list, &format!("part_number,name\nU,{long}\n")),
        [(2, RowFault::TooLong { column: Column::Text(PriceField::Name), letters: 121, most: 120 })]
    );
    let longer = "x".repeat(LONGEST_CELL + 1);
    assert_eq!(refused(&list, &format!("part_number,name\nU,{longer}\n")), [(2, RowFault::Stray(Stray::TooLong))]);
}

#[test]
fn a_mark_that_could_be_either_is_asked_about_unless_another_amount_or_a_person_tells() {
    let list = PriceList::shipped();
    let which = |text: &str| RowFault::WhichMark { text: text.to_owned() };
    let doubtful = "part_number;price\nA;1.234\nB;5\nC;1,234\n";
    assert_eq!(refused(&list, doubtful), [(2, which("1.234")), (4, which("1,234"))]);
    let said = dry_run(&list, doubtful.as_bytes(), Some('.')).unwrap();
    assert_eq!(said.added[0].price, amount("1.234", '.').unwrap());
    assert!(matches!(
        said.refused[0].why,
        RowFault::Amount { fault: AmountFault::Mark { found: ',', decimal: '.' }, .. }
    ));
    let told = tried(&list, "part_number;price\nA;1.234\nB;0,50\n");
    assert_eq!(told.refused.len(), 1);
    assert_eq!(told.added[0].price, amount("0.5", '.').unwrap());
    let told = tried(&list, "part_number;price\nA;1.234\nB;0.50\n");
    assert_eq!(told.added[0].price, amount("1.234", '.').unwrap());
}

#[test]
fn a_file_that_cannot_be_tried_says_why() {
    let list = PriceList::shipped();
    let many = |rows: usize| format!("part_number\n{}", (0..rows).map(|n| format!("P{n}\n")).collect::<String>());
    let table = [
        (b"".to_vec(), FileFault::Empty),
        ("\u{feff}\r\n".as_bytes().to_vec(), FileFault::Empty),
        (b"part_number,price\n".to_vec(), FileFault::Empty),
        (b"PK\x03\x04\xff".to_vec(), FileFault::NotUtf8),
        (b"part_number,name\nU,caf\xe9\n".to_vec(), FileFault::NotUtf8),
        (b"number,what\n1,x\n".to_vec(), FileFault::NoHeader),
        (b"name,price\nx,1\n".to_vec(), FileFault::NoHeader),
        (b"key,price,Price\nx,1,2\n".to_vec(), FileFault::SameColumn(Column::Price)),
        (many(100_000).into_bytes(), FileFault::TooMany { rows: 100_000 }),
        (many(MOST_ROWS).into_bytes(), FileFault::TooMany { rows: MOST_ROWS }),
        (vec![b'x'; MOST_BYTES + 1], FileFault::TooLong { bytes: MOST_BYTES + 1 }),
    ];
    for (bytes, why) in table {
        assert_eq!(dry_run(&list, &bytes, None), Err(why));
    }
}

#[test]
fn ten_thousand_rows_are_tried_and_taken_and_tried_again() {
    let mut list = PriceList::shipped();
    let file: String = std::iter::once("part_number,name,price\n".to_owned())
        .chain((0..10_000).map(|n| format!("P-{n:05},Part {n},{}.{:02}\n", n / 7, n % 100)))
        .collect();
    let run = tried(&list, &file);
    assert_eq!((run.added.len(), run.refused.len()), (10_000, 0));
    apply(&mut list, run.edit(), &Id::new("desk")).unwrap();
    assert_eq!(tried(&list, &file).unchanged, 10_000);
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof!["[a-z0-9 ,;\"'=+@\t\r\n.-]{0,12}", any::<String>().prop_map(|text| text.chars().take(40).collect())]
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn whatever_is_typed_comes_back(texts in prop::collection::vec(text(), 5), units in 0_i64..1_000_000_000, comma: bool, semicolon: bool) {
        let mut list = PriceList::shipped();
        let mut own = row("own:x", "", "1");
        let fields = PriceField::ALL.iter().filter(|field| **field != PriceField::SupersededBy);
        for (&field, text) in fields.zip(&texts) {
            text.clone_into(own.text_mut(field));
        }
        own.cost = amount(&format!("{}.{:02}", units / 100, units % 100), '.').unwrap();
        put(&mut list, own.clone());
        let separator = if semicolon { Separator::Semicolon } else { Separator::Comma };
        let file = list_csv(&list, FileForm { separator, decimal: if comma { ',' } else { '.' }, mark: comma });
        let mut other = PriceList::shipped();
        let run = dry_run(&other, file.as_bytes(), None).unwrap();
        prop_assert!(run.refused.is_empty(), "{:?}", run.refused);
        apply(&mut other, run.edit(), &Id::new("desk")).unwrap();
        prop_assert_eq!(&**other.row("own:x").unwrap(), &own);
    }

    #[test]
    fn no_file_panics(text in "[a-z0-9,;\"\r\n.= -]{0,120}", damaged in any::<prop::sample::Index>(), with: u8) {
        let list = hostile();
        let _ = dry_run(&list, format!("key,price,size\n{text}").as_bytes(), None);
        let mut bytes = list_csv(&list, PLAIN).into_bytes();
        let at = damaged.index(bytes.len());
        bytes[at] = with;
        if let Ok(run) = dry_run(&list, &bytes, None) {
            let mut after = list.clone();
            prop_assert!(apply(&mut after, run.edit(), &Id::new("desk")).is_ok());
        }
    }
}

/// Kept as a list so that a new column is written into the README as well.
#[test]
fn the_readme_names_every_column() {
    let readme = std::fs::read_to_string(crate::repository("README.md")).unwrap();
    for (name, _) in NAMES {
        assert!(readme.contains(&format!("`{name}`")), "{name}");
    }
}
