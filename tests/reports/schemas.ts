/**
 * Hand-made schemas, each a subset of what its readers accept.
 *
 * JUNIT: written by us from the elements, attributes and required attributes of the published xUnit schema
 * junit-10 (MIT licence, jenkinsci/xunit-plugin); only the parts this project writes, in the same positions and
 * with counts narrowed to numbers, so that what passes here passes there. That schema is in no package; the report of the
 * invented notes was held against it once by hand and was valid.
 * CHECKSTYLE: there is no official schema; elements, attributes and severities from memory.
 * GITLAB: the fields named in the public documentation of code quality reports, which publishes no schema file.
 */
export const JUNIT_SUBSET = `<?xml version="1.0" encoding="UTF-8"?>
<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">
  <xs:complexType name="outcome" mixed="true">
    <xs:attribute name="type" type="xs:string"/>
    <xs:attribute name="message" type="xs:string"/>
  </xs:complexType>
  <xs:complexType name="case">
    <xs:choice minOccurs="0">
      <xs:element name="failure" type="outcome"/>
      <xs:element name="system-out" type="xs:string"/>
    </xs:choice>
    <xs:attribute name="name" type="xs:string" use="required"/>
    <xs:attribute name="classname" type="xs:string"/>
  </xs:complexType>
  <xs:complexType name="suite">
    <xs:sequence><xs:element name="testcase" type="case" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
    <xs:attribute name="name" type="xs:string" use="required"/>
    <xs:attribute name="tests" type="xs:nonNegativeInteger" use="required"/>
    <xs:attribute name="failures" type="xs:nonNegativeInteger" use="required"/>
    <xs:attribute name="errors" type="xs:nonNegativeInteger" use="required"/>
  </xs:complexType>
  <xs:element name="testsuites">
    <xs:complexType>
      <xs:sequence><xs:element name="testsuite" type="suite" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
      <xs:attribute name="name" type="xs:string"/>
      <xs:attribute name="tests" type="xs:nonNegativeInteger"/>
      <xs:attribute name="failures" type="xs:nonNegativeInteger"/>
      <xs:attribute name="errors" type="xs:nonNegativeInteger"/>
    </xs:complexType>
  </xs:element>
</xs:schema>`;

export const CHECKSTYLE_SUBSET = `<?xml version="1.0" encoding="UTF-8"?>
<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">
  <xs:simpleType name="severity">
    <xs:restriction base="xs:string">
      <xs:enumeration value="ignore"/><xs:enumeration value="info"/>
      <xs:enumeration value="warning"/><xs:enumeration value="error"/>
    </xs:restriction>
  </xs:simpleType>
  <xs:complexType name="error">
    <xs:attribute name="line" type="xs:positiveInteger" use="required"/>
    <xs:attribute name="column" type="xs:positiveInteger"/>
    <xs:attribute name="severity" type="severity" use="required"/>
    <xs:attribute name="message" type="xs:string" use="required"/>
    <xs:attribute name="source" type="xs:string"/>
  </xs:complexType>
  <xs:complexType name="file">
    <xs:sequence><xs:element name="error" type="error" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
    <xs:attribute name="name" type="xs:string" use="required"/>
  </xs:complexType>
  <xs:element name="checkstyle">
    <xs:complexType>
      <xs:sequence><xs:element name="file" type="file" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
      <xs:attribute name="version" type="xs:string" use="required"/>
    </xs:complexType>
  </xs:element>
</xs:schema>`;

export const GITLAB_FIELDS = {
  type: 'array',
  items: {
    type: 'object',
    required: ['description', 'check_name', 'fingerprint', 'severity', 'location'],
    properties: {
      description: { type: 'string', minLength: 1 },
      check_name: { type: 'string', minLength: 1 },
      fingerprint: { type: 'string', minLength: 1 },
      severity: { enum: ['info', 'minor', 'major', 'critical', 'blocker'] },
      location: {
        type: 'object',
        required: ['path', 'lines'],
        properties: {
          path: { type: 'string', pattern: '^(?!\\./|/)' },
          lines: { type: 'object', required: ['begin'], properties: { begin: { type: 'integer', minimum: 1 } } },
        },
      },
    },
  },
} as const;
