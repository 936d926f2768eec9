use crate::entry::{Marks, Unit, typed, with_part};

#[test]
fn a_part_of_an_inch_goes_behind_whole_inches_and_replaces_the_part_before() {
    for (text, part, becomes) in [
        ("", "1/2", "1/2"),
        ("  ", "1/2", "1/2"),
        ("47", "3/8", "47 3/8"),
        ("47 ", "3/8", "47 3/8"),
        ("47 3/8", "1/2", "47 1/2"),
        ("3/8", "1/2", "1/2"),
        ("4' 4", "1/2", "4' 4 1/2"),
        ("4' 4 1/4", "1/2", "4' 4 1/2"),
        ("4'", "1/2", "4' 1/2"),
    ] {
        let found = with_part(text, part).unwrap();
        assert_eq!(found, becomes);
        assert!(typed(&found, Unit::Inch, Marks { decimal: '.' }).is_ok(), "{found}");
    }
}

#[test]
fn where_no_part_can_follow_nothing_changes() {
    for text in ["47.5", "47,5", "47 mm", "abc", "47 1/", "1 200 mm", "47\"", "–"] {
        assert_eq!(with_part(text, "1/2"), None, "{text}");
    }
}
